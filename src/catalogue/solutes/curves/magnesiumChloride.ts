import type { FittedCurve } from "../../fittedCurve";

export const magnesiumChlorideFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 3,
    debyeHueckel: 2.2601999999999998,
    a: [20.543138341082038, 0, 0, 0],
    e: 61.2865731541679,
    e2: -13.652725997440456,
    k: [-0.7582986209181755, 1.8056350055315455],
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
