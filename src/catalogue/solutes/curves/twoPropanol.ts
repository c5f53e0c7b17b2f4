// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const twoPropanolFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0,
    a: [5.368433, -11.56749, 0, 0],
    e: -7.881674,
    e2: 0,
    k: [0, 0],
  },
  curveRecord: {
    source: ["crc102"],
    obtained: "computed here",
    rmsK: 0.0401,
    largestK: 0.105,
    points: 15,
    checkedToC: -8.52,
    relativeUncertainty: 0.014,
    basis:
      "15 printed freezing points; left-out fifths are met within 0.063 K (RMS), the colder half from the warmer within 0.40 K",
  },
};
