// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const sodiumSulfateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 3,
    debyeHueckel: 2.2602,
    a: [0, 0, 0, 0],
    e: -2.576369,
    e2: 4.044598,
    k: [0, 0],
  },
  curveRecord: {
    source: ["crc102"],
    obtained: "computed here",
    rmsK: 0.0259,
    largestK: 0.056,
    points: 7,
    checkedToC: -1.56,
    relativeUncertainty: 0.05,
    basis:
      "7 printed freezing points; left-out fifths are met within 0.039 K (RMS), the colder half from the warmer within 0.25 K",
  },
};
