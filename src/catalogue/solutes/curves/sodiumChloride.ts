// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const sodiumChlorideFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342,
    a: [0.7640631, 20.76242, -33.60456, 0],
    e: 6.584229,
    e2: 0,
    k: [1.386699, -4.348398],
  },
  curveRecord: {
    source: ["crc102", "tonerCatling2017"],
    obtained: "computed here",
    rmsK: 0.0633,
    largestK: 0.201,
    points: 59,
    checkedToC: -21,
    relativeUncertainty: 0.01,
    basis:
      "59 printed freezing points; left-out fifths are met within 0.070 K (RMS), the colder half from the warmer within 0.45 K",
  },
};
