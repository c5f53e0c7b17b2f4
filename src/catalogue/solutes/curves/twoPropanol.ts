// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const twoPropanolFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0,
    a: [5.250201, -11.35884, 0, 0],
    e: -7.600874,
    e2: 0,
    k: [0, 0],
  },
  curveRecord: {
    source: ["crc102"],
    obtained: "computed here",
    rmsK: 0.0378,
    largestK: 0.093,
    points: 15,
    checkedToC: -8.52,
    relativeUncertainty: 0.0142,
    basis:
      "15 printed freezing points; left-out fifths are met within 0.059 K (RMS), the colder half from the warmer within 0.28 K",
  },
};
