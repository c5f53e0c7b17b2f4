import type { FittedCurve } from "../../fittedCurve";

export const maltoseFit: FittedCurve = {
  curve: { form: "hydration", sites: 11, constantFreezing: 1.047, constant25C: 0.972 },
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
