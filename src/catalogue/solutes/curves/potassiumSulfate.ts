import type { FittedCurve } from "../../fittedCurve";

export const potassiumSulfateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 3,
    debyeHueckel: 2.2601999999999998,
    a: [0, 0, 0, 0],
    e: 11.472160736961637,
    e2: 0,
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
