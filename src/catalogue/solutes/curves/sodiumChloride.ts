// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const sodiumChlorideFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342,
    a: [0.9364049, 19.08007, -31.4563, 0],
    e: 6.369826,
    e2: 0,
    k: [1.377986, -4.033914],
  },
  curveRecord: {
    source: ["crc102", "tonerCatling2017"],
    obtained: "computed here",
    rmsK: 0.0253,
    largestK: 0.073,
    points: 53,
    checkedToC: -20.67,
    relativeUncertainty: 0.01,
    basis:
      "53 printed freezing points; left-out fifths are met within 0.029 K (RMS), the colder half from the warmer within 0.12 K",
  },
};
