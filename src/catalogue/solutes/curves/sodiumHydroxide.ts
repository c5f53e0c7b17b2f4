import type { FittedCurve } from "../../fittedCurve";

export const sodiumHydroxideFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342489459449,
    a: [3.312825765857487, 8.623880174147246, 0, 0],
    e: 3.6443218666725743,
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
