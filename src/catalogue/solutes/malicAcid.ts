import { defineSolute } from "../solute";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const malicAcid = defineSolute({
  name: "malic acid",
  aliases: { en: ["DL-malic acid", "E 296"], de: ["Äpfelsäure", "Apfelsäure"] },
  formula: "C4H6O5",
  cas: "6915-15-7",
  kind: "acid",
  food: true,
  molarMass: molarMassOf("C4H6O5"),
  vantHoff: particles(1),
  curve: { form: "norrish", constant: 1.82 },
  curveRecord: {
    source: ["chirife1980"],
    obtained: "computed here",
    rmsK: 0,
    largestK: 0,
    points: 0,
    checkedToC: 0,
    relativeUncertainty: 0.05,
    basis: "Norrish constant at 25 °C; dissociation (up to 4 % more particles) not counted",
  },
  solubility20: {
    value: 126,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 8,
    basis: "spread of printed figures",
  },
});
