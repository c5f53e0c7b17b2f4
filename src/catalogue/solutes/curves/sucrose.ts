// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const sucroseFit: FittedCurve = {
  curve: { form: "hydration", sites: 11, constantFreezing: 1.0701, constant25C: 0.994 },
  curveRecord: {
    source: ["crc102"],
    obtained: "computed here",
    rmsK: 0.007,
    largestK: 0.019,
    points: 32,
    checkedToC: -4.93,
    relativeUncertainty: 0.004,
    basis:
      "32 printed freezing points; left-out fifths are met within 0.008 K (RMS), the colder half from the warmer within 0.05 K",
  },
};
