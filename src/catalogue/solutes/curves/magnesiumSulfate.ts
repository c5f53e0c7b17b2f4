import type { FittedCurve } from "../../fittedCurve";

export const magnesiumSulfateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 4.261873991567559,
    a: [4.704577560220114, 0, 0, 0],
    e: 145.7921772877074,
    e2: -37.167142443805176,
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
