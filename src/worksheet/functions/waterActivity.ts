import { waterActivityOfMix } from "../../recipe/activity";
import { defineFunction, ownIngredients, recipe, temperature } from "../define";

export const waterActivity = defineFunction({
  name: "WATERACTIVITY",
  summary: "Water activity of the liquid mix as written, no ice.",
  args: {
    mix: recipe(),
    temperature: temperature("Temperature of the mix", { from: 0, to: 100, default: 25 }),
    ownIngredients: ownIngredients(),
  },
  unit: "1",
  sources: ["stokesRobinson1966"],
  example: { formula: '=RIME.WATERACTIVITY({"water";"sucrose"},{35;65})', from: "computed here" },
  method:
    "a_w = exp(−M_w·θ), θ such that Σ n·w(θ) equals all the water at this temperature; above 25 °C the value of 25 °C. No release of shelf life: that needs a measurement.",
  seeAlso: ["BOILINGPOINT", "OSMOTICPRESSURE"],
  compute: ({ mix, temperature: temperatureC }) => waterActivityOfMix(mix, temperatureC),
});
