import type { FittedCurve } from "../../fittedCurve";

export const sodiumBicarbonateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342489459449,
    a: [0.2796908704309886, 0, 0, 0],
    e: -7.930751076355133,
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
