import { badInput } from "../../foundation/problem";
import { defineFunction, notNegative } from "../define";

export const massFraction = defineFunction({
  name: "MASSFRACTION",
  summary: "Mass of a solute over the mass of solute and solvent together.",
  args: {
    soluteGrams: notNegative("Mass of the solute in g", "g"),
    solventGrams: notNegative("Mass of the solvent in g", "g"),
  },
  unit: "fraction",
  sources: ["openstaxChemistry2e"],
  example: { formula: "=RIME.MASSFRACTION(115,350)", from: "computed here" },
  method: "solute / (solute + solvent). 115 g in 350 g of water is 24.7 %, not 32.9 %.",
  seeAlso: ["CONCENTRATION", "MOLALITY"],
  compute: ({ soluteGrams, solventGrams }) =>
    soluteGrams + solventGrams > 0
      ? soluteGrams / (soluteGrams + solventGrams)
      : badInput("soluteGrams and solventGrams are both 0 g; their sum must be above 0."),
});
