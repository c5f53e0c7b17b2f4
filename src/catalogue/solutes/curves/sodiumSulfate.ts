import type { FittedCurve } from "../../fittedCurve";

export const sodiumSulfateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 3,
    debyeHueckel: 2.2601999999999998,
    a: [7.578650323981474, 0, 0, 0],
    e: 31.76929436481575,
    e2: -32.424172341844184,
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
