import type { FittedCurve } from "../../fittedCurve";

export const sodiumDihydrogenPhosphateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342489459449,
    a: [3.916117312202813, 0, 0, 0],
    e: 12.577666684866557,
    e2: -21.249881462735747,
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
