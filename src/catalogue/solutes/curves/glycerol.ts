import type { FittedCurve } from "../../fittedCurve";

export const glycerolFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0.0,
    a: [2.1031559464498426, -1.2666772573182574, -4.085994583201241, 0],
    e: 0,
    e2: 0,
    k: [-0.6488381605838868, 1.3589408529024811],
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
