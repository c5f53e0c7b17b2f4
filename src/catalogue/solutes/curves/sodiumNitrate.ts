import type { FittedCurve } from "../../fittedCurve";

export const sodiumNitrateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342489459449,
    a: [0, 0, 0, 0],
    e: 4.662020207618188,
    e2: -5.443122473070289,
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
