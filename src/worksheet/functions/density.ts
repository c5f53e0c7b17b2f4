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
  sources: ["crc102", "choiOkos1986", "hoiland1986", "millero1971"],
  example: { formula: '=RIME.DENSITY({"water";"sucrose"},{80;20})', from: "computed here" },
  method:
    "Volumes add up: each dissolved substance by its apparent volume, fitted to printed densities (sucrose, glucose, fructose, lactose, maltose, mannitol, glycerol, ethanol, salt, citric acid) or estimated; fat, protein, ash and fibre by Choi and Okos. ± 0.5 % for what is fitted, ± 1 % for foods, ± 2 % with much that does not dissolve. overrunFraction 0.5 is 50 % overrun. At 20 °C and melted: a frozen mix is lighter.",
  seeAlso: ["BRIX", "GRAMS"],
  compute: ({ mix, overrunFraction }) => densityOfMix(mix, overrunFraction),
});
