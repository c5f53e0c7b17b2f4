import type { Spot } from "../book";
import type { ResultPlan } from "../results";

/** A quantity of the table, its symbol and unit. */
export type Row = readonly [symbol: string, words: string, unit: string, plan: ResultPlan];

/** What is tabulated of every mark; ice at the serving temperature. */
export const rowsFor = (temperature: Spot, temperatureC: number): readonly Row[] => {
  const cold = { temperature, temperatureC, as: "formula", format: "0.0" } as const;
  return [
    ["Tfp", "Freezing point", "°C", { states: "freezing point", as: "formula" }],
    ["dT", "Depression of freezing point", "K", { states: "depression", as: "typed" }],
    ["mw", "Mass of water", "g", { states: "water", as: "formula", format: "0" }],
    ["mds", "Mass of dissolved solids", "g", { states: "dissolved", as: "typed", decimals: 0 }],
    [
      "s/w",
      "Sugars",
      "g/100 g water",
      { states: "sugar per 100 g water", as: "typed", decimals: 1 },
    ],
    ["s/m", "Sugars", "% of mix", { states: "sugar share", as: "typed" }],
    ["Iw", "Ice at Ts", "% of water", { states: "ice of water", ...cold }],
    ["Im", "Ice at Ts", "% of mix", { states: "ice of mix", ...cold }],
  ];
};
