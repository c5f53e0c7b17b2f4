// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const glycerolFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0,
    a: [2.042536, -2.32238, 0, 0],
    e: 0,
    e2: 0,
    k: [-0.4479419, 0.7300533],
  },
  curveRecord: {
    source: ["crc102", "melinder2010"],
    obtained: "computed here",
    rmsK: 0.1448,
    largestK: 0.43,
    points: 29,
    checkedToC: -40.385,
    relativeUncertainty: 0.02,
    basis:
      "29 printed freezing points; left-out fifths are met within 0.206 K (RMS), the colder half from the warmer within 0.53 K",
  },
};
