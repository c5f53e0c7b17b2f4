import { iceFractionOfMix } from "../../recipe/freezing";
import { choice, defineFunction, ownIngredients, recipe, temperature } from "../define";

export const iceFraction = defineFunction({
  name: "ICEFRACTION",
  summary: "Share of a mix that is ice at a temperature.",
  args: {
    mix: recipe(),
    temperature: temperature("Temperature of the mix", { from: -60, to: 100 }),
    basis: choice("What the share is of", ["water", "mix"], { default: "water" }),
    ownIngredients: ownIngredients(),
  },
  unit: "fraction",
  sources: ["stokesRobinson1966", "murphyKoop2005"],
  example: {
    formula: '=RIME.ICEFRACTION({"water";"sucrose"},{200;70},-12)',
    from: "computed here",
  },
  method:
    "Liquid water at T = Σ n·w(θ(T)), no more than there is; the rest is ice. Below Tm′ the share stays at its value there; 0 above 0 °C and in a mix whose ice line lies below Tm′, such as honey.",
  seeAlso: ["ICETEMPERATURE", "FREEZINGCURVE", "CHECK"],
  compute: ({ mix, temperature: temperatureC, basis }) =>
    iceFractionOfMix(mix, temperatureC, basis),
});
