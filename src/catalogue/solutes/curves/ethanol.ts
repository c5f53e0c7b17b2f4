// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const ethanolFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0,
    a: [0, 29.92833, -129.3015, 120.8159],
    e: -1.317012,
    e2: 0,
    k: [0, 0],
  },
  curveRecord: {
    source: ["crc102"],
    obtained: "computed here",
    rmsK: 0.1688,
    largestK: 0.661,
    points: 45,
    checkedToC: -49.52,
    relativeUncertainty: 0.04,
    basis:
      "45 printed freezing points; left-out fifths are met within 0.194 K (RMS), the colder half from the warmer within 6.23 K",
  },
};
