import { compositionOf } from "../../recipe/components";
import { defineTable, ownIngredients, recipe } from "../define";

export const composition = defineTable({
  name: "COMPOSITION",
  summary: "Table of what a mix is made of, in grams and as shares.",
  args: { mix: recipe(), ownIngredients: ownIngredients() },
  unit: "table",
  sources: ["usdaSr26"],
  example: {
    formula: '=RIME.COMPOSITION({"whole milk";"sucrose"},{500;80})',
    from: "computed here",
  },
  method:
    "Sum of amount × composition; the parts add up to the mass of the mix. Pieces that do not dissolve count as inert but for their fat and protein.",
  seeAlso: ["COMPONENT"],
  table: ({ mix }) => [
    ["component", "g", "share of mix"],
    ...compositionOf(mix).map(({ name, grams }) => [name, grams, grams / mix.totalGrams]),
    ["total", mix.totalGrams, 1],
  ],
});
