import type { FittedCurve } from "../../fittedCurve";

export const trisodiumCitrateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 4,
    debyeHueckel: 5.536336716638538,
    a: [6.441164285451672, 0, 0, 0],
    e: 155.13988968866505,
    e2: -45.28284062914585,
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
