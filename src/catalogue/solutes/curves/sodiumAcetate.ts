import type { FittedCurve } from "../../fittedCurve";

export const sodiumAcetateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342489459449,
    a: [1.2020141577353516, 0, 0, 0],
    e: 17.12991169686594,
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
