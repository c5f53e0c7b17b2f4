import { defineSolute } from "../solute";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const tartaricAcid = defineSolute({
  name: "tartaric acid",
  aliases: { en: ["L-tartaric acid", "E 334"], de: ["Weinsäure", "Weinsteinsäure"] },
  formula: "C4H6O6",
  cas: "87-69-4",
  kind: "acid",
  food: true,
  molarMass: molarMassOf("C4H6O6"),
  vantHoff: particles(1),
  curve: { form: "norrish", constant: 4.68 },
  curveRecord: {
    source: ["chirife1980"],
    obtained: "computed here",
    rmsK: 0,
    largestK: 0,
    points: 0,
    checkedToC: 0,
    relativeUncertainty: 0.06,
    basis: "Norrish constant at 25 °C; dissociation (up to 8 % more particles) not counted",
  },
  solubility20: {
    value: 139,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 4,
    basis: "spread of printed figures",
  },
});
