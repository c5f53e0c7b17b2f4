// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const sodiumChlorideFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342,
    a: [2.889277, 6.253066, 0, 0],
    e: 2.647567,
    e2: 0,
    k: [1.532293, -5.188107],
  },
  curveRecord: {
    source: ["crc102", "tonerCatling2017", "lange15"],
    obtained: "computed here",
    rmsK: 0.0742,
    largestK: 0.2,
    points: 82,
    checkedToC: -21,
    relativeUncertainty: 0.0098,
    basis:
      "82 printed freezing points; left-out fifths are met within 0.077 K (RMS), the colder half from the warmer within 1.25 K",
  },
};
