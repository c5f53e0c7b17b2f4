import { moleOf } from "../../recipe/moles";
import { defineFunction, notNegative, positive, solute } from "../define";

export const molality = defineFunction({
  name: "MOLALITY",
  summary: "Moles of a solute per kilogram of water.",
  args: {
    solute: solute("Name of the solute"),
    soluteGrams: notNegative("Mass of the solute in g", "g"),
    waterGrams: positive("Mass of the water in g", "g"),
  },
  unit: "mol/kg",
  sources: ["ciaaw2021", "openstaxChemistry2e"],
  example: { formula: '=RIME.MOLALITY("sucrose",115,350)', from: "computed here" },
  method:
    "molality = grams / molar mass / kg of water. A hydrate gives its moles to the anhydrous solute and its own water to the water.",
  seeAlso: ["MOLES", "IDEALDEPRESSION", "FREEZINGPOINT"],
  compute: ({ solute: dissolved, soluteGrams, waterGrams }) => {
    const { moles, waterGrams: crystalWater } = moleOf(dissolved, soluteGrams);
    return moles / ((waterGrams + crystalWater) / 1000);
  },
});
