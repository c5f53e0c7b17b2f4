import { a1, addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { alsoAlcohol, halfDegrees, table } from "./words";

const VOICE: Voice = {
  lead: "Allergens:",
  honey: "Honey: not under 12 months.",
  alcohol: "Alcohol: adults only, not when pregnant, not before driving.",
  nuts: "Whole nuts: choking hazard under 5.",
  egg: "Raw egg yolk: pasteurised, or 71 °C.",
};

const SAID: readonly Said[] = [
  { label: "freezing point (°C)", states: "freezing point", as: "typed", decimals: 2 },
  { label: "depression (K)", states: "depression", as: "typed", decimals: 2 },
  { label: "water per kg (g)", states: "water", as: "typed", decimals: 0 },
  {
    label: "sugars (g per 100 g water)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  {
    ...{ label: "ice in the mix at −18 °C (%)", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -18, decimals: 0 },
  },
];

const ALCOHOL: Said = {
  ...{ label: "alcohol per kg (g)", states: "alcohol", as: "typed", decimals: 1 },
};

/** One mix of the file; gives the row for the next. */
function entry(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  putRow(sheet, top, 0, ["entry", kit.random.whole(31, 89), made.title]);
  const [, , amountLabel] = putRow(sheet, top + 1, 0, [
    "line",
    "ingredient",
    "g per kg",
    "share (%)",
  ]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 2 + index, 0, [index + 1, name, made.grams[index]]),
  );
  const [names, amounts] = [columnOf(rows, 1), columnOf(rows, 2)] as [Spot[], Spot[]];
  const end = top + 2 + rows.length;
  put(sheet, end, 1, "total");
  const total = put(sheet, end, 2, `=SUM(${span(amounts)})`);
  const alsoAmounts = amounts.map((spot) =>
    put(sheet, spot.row, 3, `=ROUND(100*${a1(spot)}/${a1(total)},1)`),
  );
  const cells = { names, amounts, alsoAmounts, total, amountLabel: amountLabel! } as const;
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  const said = alsoAlcohol(made, SAID, ALCOHOL);
  const next = say(sheet, recipe, { row: end + 1, column: 1 }, said);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "style" });
  return tellIn(sheet, recipe, { row: next + 1, column: 1 }, VOICE) + 1;
}

/** Two mixes and the readings of the cabinet, saved as values. */
function saved(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "mixes");
  const own = { sugar: "caster sugar", "whole milk": "full-cream milk" };
  let top = 0;
  for (const made of kit.make(2).map((each) => called(perKilogram(each), own))) {
    top = entry(kit, sheet, made, top);
  }
  const times = ["Mon 8:00", "Mon 16:00", "Tue 8:00", "Tue 16:00", "Wed 8:00"];
  const rows = times.map((time) => [time, halfDegrees(kit, -21, -16), kit.random.pick(["x", "y"])]);
  const list = table(sheet, { row: top, column: 0 }, ["read", "cabinet (°C)", "probe"], rows);
  temperatures(kit, list.heads[1]!, columnOf(list.rows, 1));
  note(kit, sheet, list.end + 1, 0, "probe y was recalibrated in spring");
}

/** A test kitchen that keeps its mixes as files. */
export const savedMixes: readonly Layout[] = [
  {
    ...{ name: "test kitchen, two mixes saved as values", language: "en" },
    ...{ isCsv: true, build: saved },
  },
];
