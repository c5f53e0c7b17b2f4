import type { FittedCurve } from "../../fittedCurve";

export const potassiumDihydrogenPhosphateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342489459449,
    a: [2.850551334850454, 0, 0, 0],
    e: 0,
    e2: -14.495406639593098,
    k: [0.0, 0.0],
  },
  curveRecord: {
    source: ["rimeline"],
    obtained: "computed here",
    rmsK: 0,
    largestK: 0,
    points: 0,
    checkedToC: 0,
    relativeUncertainty: 0.02,
    basis: "starting values",
  },
};
