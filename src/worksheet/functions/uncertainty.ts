import {
  freezingPointUncertaintyK,
  iceFractionUncertainty,
  waterActivityUncertainty,
} from "../../recipe/uncertainty";
import { solidsUncertainty, sweetnessUncertainty } from "../../recipe/sumsUncertainty";
import { unfrozenSolidsUncertainty } from "../../recipe/unfrozenSolidsUncertainty";
import { badInput, type Problem } from "../../foundation/problem";
import { choice, defineFunction, optionalTemperature, ownIngredients, recipe } from "../define";

const leftOut = (quantity: string): Problem =>
  badInput(
    `temperature: this is left out; for the ${quantity} one from -60 to 100 °C is expected.`,
  );

export const uncertainty = defineFunction({
  name: "UNCERTAINTY",
  summary: "One standard uncertainty (±) of what is computed for a mix.",
  args: {
    mix: recipe(),
    quantity: choice("Of what", [
      ...(["freezing point", "ice fraction", "water activity"] as const),
      ...(["unfrozen solids", "sweetness", "solids"] as const),
    ]),
    temperature: optionalTemperature(
      "Temperature of the mix, needed for ice fraction and unfrozen solids",
      { from: -60, to: 100 },
      "25 for water activity",
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
    "Root of the sum of squares: the curves of the solutes, each by its stated share of the depression; the mixing rule, by its distance from the plain sum of the depressions of sugars, salts and alcohols; the natural and trade spread of the ingredients; where freezing ends, Tm′ by ± 5 °C; for sweetness the spread of printed figures. Own ingredients and amounts are taken as given: a label's tolerance is not in it. In K for the freezing point, in g of sucrose per 100 g for sweetness, else as a share (of water, of the unfrozen phase, of the mix). Two thirds of cases lie within.",
  seeAlso: ["FREEZINGPOINT", "ICEFRACTION", "WATERACTIVITY", "UNFROZENSOLIDS", "SWEETNESS"],
  compute: ({ mix, quantity, temperature: temperatureC }) => {
    switch (quantity) {
      case "freezing point":
        return freezingPointUncertaintyK(mix);
      case "ice fraction":
        return temperatureC === null
          ? leftOut("ice fraction")
          : iceFractionUncertainty(mix, temperatureC);
      case "unfrozen solids":
        return temperatureC === null
          ? leftOut("unfrozen solids")
          : unfrozenSolidsUncertainty(mix, temperatureC);
      case "water activity":
        return waterActivityUncertainty(mix, temperatureC ?? 25);
      case "sweetness":
        return sweetnessUncertainty(mix);
      case "solids":
        return solidsUncertainty(mix);
    }
  },
});
