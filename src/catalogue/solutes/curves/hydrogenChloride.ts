import type { FittedCurve } from "../../fittedCurve";

export const hydrogenChlorideFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342489459449,
    a: [9.392504536621535, 0, 0, 0],
    e: 15.758095048429155,
    e2: -5.547852201697134,
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
