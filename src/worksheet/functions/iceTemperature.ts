import { iceTemperatureOfMix } from "../../recipe/freezing";
import { choice, defineFunction, number, ownIngredients, recipe } from "../define";

export const iceTemperature = defineFunction({
  name: "ICETEMPERATURE",
  summary: "Temperature at which a given share of a mix is ice.",
  args: {
    mix: recipe(),
    iceFraction: number("Share that is ice", { from: 0, to: 1 }),
    basis: choice("What the share is of", ["water", "mix"], { default: "water" }),
    ownIngredients: ownIngredients(),
  },
  unit: "°C",
  sources: ["stokesRobinson1966", "murphyKoop2005"],
  example: {
    formula: '=RIME.ICETEMPERATURE({"water";"sucrose"},{200;70},0.75)',
    from: "computed here",
  },
  method:
    "The temperature at which Σ n·w(θ) equals the water that is left liquid. Declined where the share cannot be reached before freezing ends at Tm′ or −60 °C.",
  seeAlso: ["ICEFRACTION", "FREEZINGPOINT"],
  compute: ({ mix, iceFraction, basis }) => iceTemperatureOfMix(mix, iceFraction, basis),
});
