// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const methanolFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0,
    a: [1.048909, -0.04587332, -3.762377, 0],
    e: 0,
    e2: 0,
    k: [0, 0],
  },
  curveRecord: {
    source: ["crc102", "melinder2010", "vdiCoolants"],
    obtained: "computed here",
    rmsK: 0.2722,
    largestK: 1.322,
    points: 51,
    checkedToC: -58.1,
    relativeUncertainty: 0.0246,
    basis:
      "51 printed freezing points; left-out fifths are met within 0.276 K (RMS), the colder half from the warmer within 5.29 K",
  },
};
