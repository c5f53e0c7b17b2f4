import { isProblem } from "../../foundation/problem";
import { workingOf } from "../../recipe/working";
import { defineTable, optionalTemperature, ownIngredients, recipe } from "../define";

export const working = defineTable({
  name: "WORKING",
  summary: "Table of the calculation as one would write it on a board.",
  args: {
    mix: recipe(),
    temperature: optionalTemperature(
      "Temperature at which the ice is worked out",
      { from: -60, to: 100 },
      "no ice lines",
    ),
    ownIngredients: ownIngredients(),
  },
  unit: "table",
  sources: ["openstaxChemistry2e", "stokesRobinson1966", "murphyKoop2005"],
  example: {
    formula: '=RIME.WORKING({"water";"sucrose"},{200;70},-12)',
    from: "computed here",
  },
  method:
    "Water of each ingredient, moles and molality of each solute, the ideal depression, what each solute holds at the freezing point and at the temperature, the ice. Where no ice can form, the lines show why.",
  seeAlso: ["FREEZINGPOINT", "ICEFRACTION", "TEXTURE"],
  table: ({ mix, temperature: temperatureC }) => {
    const lines = workingOf(mix, temperatureC);
    if (isProblem(lines)) return lines;
    return [
      ["step", "formula", "numbers", "result", "unit", "source"],
      ...lines.map((one) => [
        ...[one.step, one.formula, one.numbers, one.result, one.unit, one.source],
      ]),
    ];
  },
});
