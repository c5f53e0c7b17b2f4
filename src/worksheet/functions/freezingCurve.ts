import { badInput, isProblem } from "../../foundation/problem";
import type { Cell } from "../../foundation/cell";
import { iceFractionOfMix, unfrozenSolidsOfMix } from "../../recipe/freezing";
import type { Mix } from "../../recipe/mix";
import { defineTable, number, ownIngredients, recipe, temperature } from "../define";

const HEADER = ["temperature, °C", "ice / water", "ice / mix", "unfrozen solids"];

const rowOf = (mix: Mix, temperatureC: number): readonly Cell[] => [
  temperatureC,
  iceFractionOfMix(mix, temperatureC, "water"),
  iceFractionOfMix(mix, temperatureC, "mix"),
  unfrozenSolidsOfMix(mix, temperatureC),
];

export const freezingCurve = defineTable({
  name: "FREEZINGCURVE",
  summary: "Table of ice shares and unfrozen solids over a range of temperatures.",
  args: {
    mix: recipe(),
    from: temperature("First temperature", { from: -60, to: 100, default: 0 }),
    to: temperature("Last temperature", { from: -60, to: 100, default: -30 }),
    steps: number("Number of steps between them", { from: 1, to: 1000 }, { default: 30 }),
    ownIngredients: ownIngredients(),
  },
  unit: "table",
  sources: ["stokesRobinson1966", "murphyKoop2005"],
  example: {
    formula: '=RIME.FREEZINGCURVE({"water";"sucrose"},{200;70},0,-20,4)',
    from: "computed here",
  },
  method: "ICEFRACTION and UNFROZENSOLIDS at equal steps of temperature.",
  seeAlso: ["ICEFRACTION", "UNFROZENSOLIDS"],
  table: ({ mix, from, to, steps }) => {
    if (!Number.isInteger(steps)) {
      return badInput(`steps: ${steps} is not a whole number; one from 1 to 1000 is expected.`);
    }
    const ice = iceFractionOfMix(mix, from, "water");
    if (isProblem(ice)) return ice;
    const rows = Array.from({ length: steps + 1 }, (_, step) =>
      rowOf(mix, from + ((to - from) * step) / steps),
    );
    return [HEADER, ...rows];
  },
});
