// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const ureaFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0,
    a: [-3.542784, 0, 0, 0],
    e: -7.687724,
    e2: 7.277072,
    k: [-0.3878595, 3.854089],
  },
  curveRecord: {
    source: ["crc102"],
    obtained: "computed here",
    rmsK: 0.0823,
    largestK: 0.358,
    points: 33,
    checkedToC: -17.62,
    relativeUncertainty: 0.05,
    basis:
      "33 printed freezing points; left-out fifths are met within 0.103 K (RMS), the colder half from the warmer within 2.44 K",
  },
};
