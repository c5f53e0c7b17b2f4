import { componentGrams } from "../../recipe/components";
import { component as componentArgument, defineFunction, ownIngredients, recipe } from "../define";

export const component = defineFunction({
  name: "COMPONENT",
  summary: "Grams of a component in a mix.",
  args: {
    mix: recipe(),
    component: componentArgument(
      "water, solids, dissolved solids, sugars, polyols, higher saccharides, acids, fat, protein, ash, inert, total, or the name of a solute",
    ),
    ownIngredients: ownIngredients(),
  },
  unit: "g",
  sources: ["usdaSr26"],
  example: { formula: '=RIME.COMPONENT("whole milk",250,"lactose")', from: "computed here" },
  method:
    "Sum of amount × composition. Water is what can freeze: not the water inside pieces that do not dissolve. Solids are everything but water and alcohol. Of what stays in pieces, fat and protein keep their names and the rest is inert.",
  seeAlso: ["COMPOSITION", "INGREDIENT"],
  compute: ({ mix, component: asked }) => componentGrams(mix, asked),
});
