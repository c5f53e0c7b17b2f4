import {
  freezingPointUncertaintyK,
  iceFractionUncertainty,
  waterActivityUncertainty,
} from "../../recipe/uncertainty";
import { badInput } from "../../foundation/problem";
import { choice, defineFunction, optionalTemperature, ownIngredients, recipe } from "../define";

export const uncertainty = defineFunction({
  name: "UNCERTAINTY",
  summary: "One standard uncertainty (±) of what is computed for a mix.",
  args: {
    mix: recipe(),
    quantity: choice("Of what", ["freezing point", "ice fraction", "water activity"]),
    temperature: optionalTemperature(
      "Temperature of the mix, for ice fraction (and water activity, else 25)",
      { from: -60, to: 100 },
    ),
    ownIngredients: ownIngredients(),
  },
  unit: "as the quantity",
  sources: ["kleinhansMazur2007", "rimeline"],
  example: {
    formula: '=RIME.UNCERTAINTY({"water";"sucrose"},{200;70},"freezing point")',
    from: "computed here",
  },
  method:
    "Root of the sum of squares of three parts: the curves of the solutes, each by its stated share of the depression; the mixing rule, by its distance from the plain sum of the depressions of sugars, salts and alcohols; the natural and trade spread of the ingredients. Own ingredients and amounts are taken as given. In K, or as a fraction; two thirds of cases lie within.",
  seeAlso: ["FREEZINGPOINT", "ICEFRACTION", "WATERACTIVITY"],
  compute: ({ mix, quantity, temperature: temperatureC }) => {
    switch (quantity) {
      case "freezing point":
        return freezingPointUncertaintyK(mix);
      case "ice fraction":
        return temperatureC === null
          ? badInput(
              "temperature: this is left out; for the ice fraction one from -60 to 100 °C is expected.",
            )
          : iceFractionUncertainty(mix, temperatureC);
      case "water activity":
        return waterActivityUncertainty(mix, temperatureC ?? 25);
    }
  },
});
