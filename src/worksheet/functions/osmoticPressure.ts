import { osmoticPressureOfMix } from "../../recipe/boiling";
import { defineFunction, ownIngredients, recipe, temperature } from "../define";

export const osmoticPressure = defineFunction({
  name: "OSMOTICPRESSURE",
  summary: "Osmotic pressure of the liquid mix against pure water.",
  args: {
    mix: recipe(),
    temperature: temperature("Temperature of the mix", { from: 0, to: 100, default: 25 }),
    ownIngredients: ownIngredients(),
  },
  unit: "MPa",
  sources: ["stokesRobinson1966", "kell1975"],
  example: {
    formula: '=RIME.OSMOTICPRESSURE({"water";"sucrose"},{1000;34.2})',
    from: "computed here",
  },
  method: "Π = R·T·θ·ρ(water), with θ = −ln(a_w)/M_w; the classroom's R·T·c in dilute solutions.",
  seeAlso: ["WATERACTIVITY", "OSMOLALITY"],
  compute: ({ mix, temperature: temperatureC }) => osmoticPressureOfMix(mix, temperatureC),
});
