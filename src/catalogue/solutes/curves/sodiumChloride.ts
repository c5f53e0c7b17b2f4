import type { FittedCurve } from "../../fittedCurve";

export const sodiumChlorideFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342489459449,
    a: [1.5990097456503172, 11.153508473250215, 0, 0],
    e: 5.733583477829314,
    e2: 0,
    k: [1.4842020863644656, -5.28751431626235],
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
