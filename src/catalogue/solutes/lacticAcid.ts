import { defineSolute } from "../solute";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const lacticAcid = defineSolute({
  name: "lactic acid",
  aliases: { en: [], de: ["Milchsäure"] },
  formula: "C3H6O3",
  cas: "50-21-5",
  kind: "acid",
  food: true,
  molarMass: molarMassOf("C3H6O3"),
  vantHoff: particles(1),
  // −1.59 in the dilute limit; Norrish's own form turns back on itself below −53 °C
  curve: {
    form: "series",
    ions: 1,
    debyeHueckel: 0,
    a: [-1.59, 0, 0, 0],
    e: 0,
    e2: 0,
    k: [0, 0],
  },
  curveRecord: {
    source: ["chirife1980"],
    obtained: "computed here",
    rmsK: 0,
    largestK: 0,
    points: 0,
    checkedToC: 0,
    relativeUncertainty: 0.08,
    basis:
      "Norrish constant at 25 °C; the handbook freezing table lies 6 to 12 % warmer, its sample likely held oligomers",
  },
});
