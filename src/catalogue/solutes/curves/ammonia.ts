// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const ammoniaFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0,
    a: [1.334909, 2.38008, 0, 0],
    e: 0,
    e2: 0,
    k: [0, 0],
  },
  curveRecord: {
    source: ["melinder2010"],
    obtained: "computed here",
    rmsK: 0.075,
    largestK: 0.121,
    points: 5,
    checkedToC: -49.613,
    relativeUncertainty: 0.02,
    basis:
      "5 printed freezing points; left-out fifths are met within 0.130 K (RMS), the colder half from the warmer within 1.32 K",
  },
};
