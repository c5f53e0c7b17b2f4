import type { FittedCurve } from "../../fittedCurve";

export const aceticAcidFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0.0,
    a: [-2.017834681558988, 0, 0, 0],
    e: -1.8466800819439708,
    e2: 1.7583842805128729,
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
