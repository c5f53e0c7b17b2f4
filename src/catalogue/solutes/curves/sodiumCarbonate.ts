import type { FittedCurve } from "../../fittedCurve";

export const sodiumCarbonateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 3,
    debyeHueckel: 2.2601999999999998,
    a: [-6.16591249683184, 0, 0, 0],
    e: -42.62111971997232,
    e2: 40.943373942835244,
    k: [0.0, 0.0],
  },
  curveRecord: {
    source: ["rimeline"],
    obtained: "computed here",
    rmsK: 0,
    largestK: 0,
    points: 0,
    checkedToC: 0,
    relativeUncertainty: 0.02,
    basis: "starting values",
  },
};
