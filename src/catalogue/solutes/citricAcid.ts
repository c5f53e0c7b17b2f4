import { defineSolute } from "../solute";
import { citricAcidFit } from "./curves/citricAcid";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const citricAcid = defineSolute({
  name: "citric acid",
  aliases: { en: ["anhydrous citric acid"], de: ["Zitronensäure", "Citronensäure"] },
  formula: "C6H8O7",
  cas: "77-92-9",
  kind: "acid",
  food: true,
  molarMass: molarMassOf("C6H8O7"),
  vantHoff: particles(1),
  ...citricAcidFit,
  solubility20: {
    value: 146,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 4,
    basis: "anhydrous basis; spread of printed figures",
  },
});
