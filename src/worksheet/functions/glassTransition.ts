import { glassTransitionOfMix } from "../../recipe/glass";
import { defineFunction, ownIngredients, recipe } from "../define";

export const glassTransition = defineFunction({
  name: "GLASSTRANSITION",
  summary: "Glass transition of the unfrozen mix as written, no ice.",
  args: { mix: recipe(), ownIngredients: ownIngredients() },
  unit: "°C",
  sources: ["gordonTaylor1952", "fox1956", "roos1993"],
  example: { formula: '=RIME.GLASSTRANSITION("honey",100)', from: "computed here" },
  method:
    "Gordon–Taylor: Tg = (w_s·T_s + k·w_w·(−135)) / (w_s + k·w_w); the dry substances by Fox. ± 5 °C for sugars, ± 10 °C for syrups. Declined when more than a fifth of what is dissolved has no known transition.",
  seeAlso: ["MAXFREEZECONCENTRATED"],
  compute: ({ mix }) => glassTransitionOfMix(mix),
});
