import { freezingPointOfMix } from "../../recipe/freezing";
import { defineFunction, ownIngredients, recipe } from "../define";

export const freezingPoint = defineFunction({
  name: "FREEZINGPOINT",
  summary: "Temperature at which the first ice forms in a mix.",
  args: { mix: recipe(), ownIngredients: ownIngredients() },
  unit: "°C",
  sources: ["murphyKoop2005", "stokesRobinson1966"],
  example: {
    formula: '=RIME.FREEZINGPOINT({"water";"sucrose"},{200;70})',
    from: "computed here",
  },
  method:
    "Each solute holds some water back from freezing: w kg per mole at a given coldness θ(T) = −ln(a_ice)/M_w. The freezing point is the temperature at which Σ n·w(θ) equals all the water. Declined when that lies below Tm′, where freezing ends, or below −60 °C.",
  seeAlso: ["DEPRESSION", "ICEFRACTION", "UNCERTAINTY", "WORKING"],
  compute: ({ mix }) => freezingPointOfMix(mix),
});
