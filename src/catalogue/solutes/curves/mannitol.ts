import type { FittedCurve } from "../../fittedCurve";

export const mannitolFit: FittedCurve = {
  curve: { form: "hydration", sites: 6, constantFreezing: 0.678, constant25C: 0.47 },
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
