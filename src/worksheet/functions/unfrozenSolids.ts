import { unfrozenSolidsOfMix } from "../../recipe/freezing";
import { defineFunction, ownIngredients, recipe, temperature } from "../define";

export const unfrozenSolids = defineFunction({
  name: "UNFROZENSOLIDS",
  summary: "Share of dissolved matter in the part of a mix that is not frozen.",
  args: {
    mix: recipe(),
    temperature: temperature("Temperature of the mix", { from: -60, to: 100 }),
    ownIngredients: ownIngredients(),
  },
  unit: "fraction",
  sources: ["stokesRobinson1966", "murphyKoop2005"],
  example: {
    formula: '=RIME.UNFROZENSOLIDS({"water";"sucrose"},{200;70},-18)',
    from: "computed here",
  },
  method:
    "dissolved / (dissolved + liquid water), by mass; alcohol counts as dissolved, fat and what does not dissolve are left out.",
  seeAlso: ["ICEFRACTION", "MAXFREEZECONCENTRATED"],
  compute: ({ mix, temperature: temperatureC }) => unfrozenSolidsOfMix(mix, temperatureC),
});
