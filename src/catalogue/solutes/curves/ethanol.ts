// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const ethanolFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0,
    a: [0, 29.88274, -128.953, 120.187],
    e: -1.315447,
    e2: 0,
    k: [0, 0],
  },
  curveRecord: {
    source: ["crc102"],
    obtained: "computed here",
    rmsK: 0.1683,
    largestK: 0.651,
    points: 45,
    checkedToC: -49.52,
    relativeUncertainty: 0.04,
    basis:
      "45 printed freezing points; left-out fifths are met within 0.192 K (RMS), the colder half from the warmer within 7.77 K",
  },
};
