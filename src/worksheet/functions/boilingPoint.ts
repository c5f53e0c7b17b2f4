import { boilingPointOfMix } from "../../recipe/boiling";
import { defineFunction, ownIngredients, positive, recipe } from "../define";

export const boilingPoint = defineFunction({
  name: "BOILINGPOINT",
  summary: "Temperature at which a mix boils.",
  args: {
    mix: recipe(),
    pressure: positive("Air pressure in kPa", "kPa", { default: 101.325 }),
    ownIngredients: ownIngredients(),
  },
  unit: "°C",
  sources: ["wagnerPruss1993", "stokesRobinson1966"],
  example: { formula: '=RIME.BOILINGPOINT({"water";"sucrose"},{35;65})', from: "computed here" },
  method:
    "The temperature at which water activity × vapour pressure of water equals the air pressure; the water activity is that of 25 °C. Not with alcohol.",
  seeAlso: ["IDEALELEVATION", "WATERACTIVITY"],
  compute: ({ mix, pressure }) => boilingPointOfMix(mix, pressure),
});
