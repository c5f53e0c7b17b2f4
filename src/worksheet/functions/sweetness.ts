import { sweetnessOfMix } from "../../recipe/sweetness";
import { defineFunction, ownIngredients, recipe } from "../define";

export const sweetness = defineFunction({
  name: "SWEETNESS",
  summary: "Grams of sucrose per 100 g of mix that would taste as sweet.",
  args: { mix: recipe(), ownIngredients: ownIngredients() },
  unit: "g sucrose per 100 g",
  sources: ["goffHartel2013"],
  example: {
    formula: '=RIME.SWEETNESS({"water";"sucrose";"fructose"},{200;50;20})',
    from: "computed here",
  },
  method:
    "Σ grams × relative sweetness / mass of the mix × 100. Relative sweetness is that of 5–10 % solutions near room temperature, gram for gram, without synergy; the tongue is duller in the cold.",
  seeAlso: ["SOLUTE", "COMPONENT"],
  compute: ({ mix }) => sweetnessOfMix(mix),
});
