import { defineSolute } from "../solute";
import { molarMassOf } from "./molarMassOf";
import { particles } from "./particles";

export const lacticAcid = defineSolute({
  name: "lactic acid",
  aliases: { en: [], de: ["Milchsäure"] },
  formula: "C3H6O3",
  cas: "50-21-5",
  kind: "acid",
  food: true,
  molarMass: molarMassOf("C3H6O3"),
  vantHoff: particles(1),
  curve: { form: "norrish", constant: -1.59 },
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
