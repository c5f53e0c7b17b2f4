import type { FittedCurve } from "../../fittedCurve";

export const calciumChlorideFit: FittedCurve = {
  curve: {
    form: "series",
    ions: 3,
    debyeHueckel: 2.2601999999999998,
    a: [18.241318950082775, 0, 0, 0],
    e: 57.31841804463259,
    e2: -13.321300659955071,
    k: [0.06678129391649179, 0.06675064208965509],
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
