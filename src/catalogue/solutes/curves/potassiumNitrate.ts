import type { FittedCurve } from "../../fittedCurve";

export const potassiumNitrateFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 2,
    debyeHueckel: 0.5327342489459449,
    a: [4.215055890241078, 0, 0, 0],
    e: 3.09294703102252,
    e2: -21.774915412521807,
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
