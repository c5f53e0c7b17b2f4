import type { FittedCurve } from "../../fittedCurve";

export const propyleneGlycolFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0.0,
    a: [0, 9.925455767529593, -16.08777386697072, 0],
    e: 7.365689142744516,
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
