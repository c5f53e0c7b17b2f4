import type { FittedCurve } from "../../fittedCurve";

export const fructoseFit: FittedCurve = {
  curve: { form: "hydration", sites: 6, constantFreezing: 0.745, constant25C: 0.663 },
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
