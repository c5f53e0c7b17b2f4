// Written by src/catalogue/fit/run.ts; a change by hand is lost at the next run.
import type { FittedCurve } from "../../fittedCurve";

export const potassiumChlorideFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342,
    a: [3.528242, 0, 0, 0],
    e: 4.344507,
    e2: -3.870521,
    k: [1.663374, -6.533531],
  },
  curveRecord: {
    source: ["crc102", "tonerCatling2017"],
    obtained: "computed here",
    rmsK: 0.0141,
    largestK: 0.042,
    points: 35,
    checkedToC: -10,
    relativeUncertainty: 0.004,
    basis:
      "35 printed freezing points; left-out fifths are met within 0.015 K (RMS), the colder half from the warmer within 0.18 K",
  },
};
