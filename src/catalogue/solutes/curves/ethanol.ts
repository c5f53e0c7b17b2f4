import type { FittedCurve } from "../../fittedCurve";

export const ethanolFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0.0,
    a: [0, 29.9634457578287, -129.69398573980413, 121.71171012788663],
    e: -1.3389050267322347,
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
