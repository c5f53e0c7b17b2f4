import type { FittedCurve } from "../../fittedCurve";

export const ureaFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0.0,
    a: [-2.4008216453493243, 0, 0, 0],
    e: -4.726187764841661,
    e2: 4.215505945313875,
    k: [-0.3133791590742607, 3.0214268884930156],
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
