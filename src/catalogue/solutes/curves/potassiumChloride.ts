import type { FittedCurve } from "../../fittedCurve";

export const potassiumChlorideFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342489459449,
    a: [1.4703904897230875, -0.13115287131475872, 0, 0],
    e: 2.2450235566372188,
    e2: 0,
    k: [1.4731527200658079, -3.5629640594271392],
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
