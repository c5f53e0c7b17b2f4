// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const maltoseFit: FittedCurve = {
  curve: { form: "hydration", sites: 11, constantFreezing: 1.0466, constant25C: 0.9722621 },
  curveRecord: {
    source: ["crc102"],
    obtained: "computed here",
    rmsK: 0.016,
    largestK: 0.037,
    points: 33,
    checkedToC: -5.35,
    relativeUncertainty: 0.0114,
    basis:
      "33 printed freezing points; left-out fifths are met within 0.017 K (RMS), the colder half from the warmer within 0.17 K",
  },
};
