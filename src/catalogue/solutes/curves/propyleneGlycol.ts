// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const propyleneGlycolFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0,
    a: [0, 8.58083, -12.83931, 0],
    e: 8.24364,
    e2: 0,
    k: [0, 0],
  },
  curveRecord: {
    source: ["melinder2010", "ashraeGlycols"],
    obtained: "computed here",
    rmsK: 0.2678,
    largestK: 0.547,
    points: 11,
    checkedToC: -51.1,
    relativeUncertainty: 0.02,
    basis:
      "11 printed freezing points; left-out fifths are met within 0.473 K (RMS), the colder half from the warmer within 0.85 K",
  },
};
