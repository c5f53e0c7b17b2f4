import { moleOf } from "../../recipe/moles";
import { defineFunction, notNegative, solute } from "../define";

export const moles = defineFunction({
  name: "MOLES",
  summary: "Moles in a mass of a solute.",
  args: {
    solute: solute("Name of the solute"),
    grams: notNegative("Its mass in g", "g"),
  },
  unit: "mol",
  sources: ["ciaaw2021"],
  example: { formula: '=RIME.MOLES("sodium chloride",58.44)', from: "computed here" },
  method: "moles = grams / molar mass.",
  seeAlso: ["MOLALITY", "SOLUTE"],
  compute: ({ solute: dissolved, grams }) => moleOf(dissolved, grams).moles,
});
