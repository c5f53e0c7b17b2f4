import type { FittedCurve } from "../../fittedCurve";

export const citricAcidFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0.0,
    a: [-5.430517596744301, 9.839580038342195, 0, 0],
    e: 13.558068909952263,
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
