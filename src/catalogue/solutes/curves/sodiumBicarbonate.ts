// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const sodiumBicarbonateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342,
    a: [1.744306, 0, 0, 0],
    e: -10.00115,
    e2: 0,
    k: [0, 0],
  },
  curveRecord: {
    source: ["crc102"],
    obtained: "computed here",
    rmsK: 0.0066,
    largestK: 0.013,
    points: 12,
    checkedToC: -2.26,
    relativeUncertainty: 0.03,
    basis:
      "12 printed freezing points; left-out fifths are met within 0.007 K (RMS), the colder half from the warmer within 0.01 K",
  },
};
