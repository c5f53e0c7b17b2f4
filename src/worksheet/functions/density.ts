import { densityOfMix } from "../../recipe/density";
import { defineFunction, notNegative, ownIngredients, recipe } from "../define";

export const density = defineFunction({
  name: "DENSITY",
  summary: "Density of a mix at 20 °C, with air if there is any.",
  args: {
    mix: recipe(),
    overrunFraction: notNegative("Volume of air over volume of mix", "", { default: 0 }),
    ownIngredients: ownIngredients(),
  },
  unit: "g/mL",
  sources: ["crc102", "choiOkos1986"],
  example: { formula: '=RIME.DENSITY({"water";"sucrose"},{80;20})', from: "computed here" },
  method:
    "Volumes add up: what is dissolved by what it adds to water (printed densities, sucrose where there are none), fat, protein, ash and fibre by Choi and Okos. ± 1 %, ± 2 % above 60 % of dissolved matter or with much that does not dissolve.",
  seeAlso: ["BRIX", "GRAMS"],
  compute: ({ mix, overrunFraction }) => densityOfMix(mix, overrunFraction),
});
