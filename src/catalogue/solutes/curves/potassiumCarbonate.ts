import type { FittedCurve } from "../../fittedCurve";

export const potassiumCarbonateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 3,
    debyeHueckel: 2.2601999999999998,
    a: [12.818612000612402, 0, 0, 0],
    e: 37.92327992460581,
    e2: -12.926383685810364,
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
