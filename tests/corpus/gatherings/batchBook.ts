import { a1, addSheet, put, putRow, shown, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { again } from "../layouts/marking";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf } from "../strollers/words";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "allergens",
  honey: "honey, so not under 12 months;",
  alcohol: "alcohol, so not for children, the pregnant, drivers;",
  nuts: "whole nuts, choking under 5 years;",
  egg: "raw yolk, heat to 71 °C or pasteurised;",
};

const SAID: readonly (readonly [string, ResultPlan])[] = [
  ["Fr. pt. °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Lowered K", { states: "depression", as: "typed", decimals: 2 }],
  ["Water g", { states: "water", as: "typed", decimals: 0 }],
  [
    "Water frozen at −14 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  ],
];

const DATES = ["3 May", "17 May", "31 May", "14 June", "28 June"];

/** What was said of the batches when they were tasted. */
const TASTED = ["good", "bit hard", "fine, softer", "as the first", "best so far"];

/** A recipe's page: a batch in each row, ingredients along the top. */
function page(kit: Kit, made: MadeRecipe, name: string): void {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, made.title);
  const batches = [made, ...DATES.slice(1).map(() => again(kit, made))];
  const amountLabel = put(sheet, 1, 2, "grams →");
  putRow(sheet, 2, 0, ["Made on", "By"]);
  const names = itemsOf(batches);
  const items = putRow(sheet, 2, 2, names);
  const left = 2 + names.length;
  const heads = putRow(sheet, 2, left, ["All g", ...SAID.map(([words]) => words), "Tasted"]);
  const rows = batches.map((each, index): Spot[] => {
    const row = 3 + index;
    putRow(sheet, row, 0, [DATES[index], ["R.", "me", "R. + me"][index % 3]]);
    const plan = { items, unit: "g", format: "0", amountLabel } as const;
    const recipe = alongRow(kit, sheet, each, row, plan);
    SAID.forEach(([, result], at) => {
      resultAt(
        sheet,
        recipe,
        heads[1 + at]!,
        { row, column: left + 1 + at },
        result,
        () => recipe.lines,
      );
    });
    put(sheet, row, left + 1 + SAID.length, TASTED[index]);
    nameTarget(sheet, recipe, { row, column: left + 2 + SAID.length });
    tellIn(sheet, recipe, { row, column: left + 3 + SAID.length }, VOICE);
    return [{ sheet: sheet.name, row, column: left + 1 }];
  });
  putRow(sheet, 2, left + 2 + SAID.length, ["Aim", "For the label"]);
  kit.marked.formulaColumns.push({ spots: columnOf(rows, 0), heading: heads[1]!, fixed: [] });
}

/** What was in the freezer when. */
function freezer(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Freezer");
  put(sheet, 0, 0, "Chest freezer, read with the probe in a jar of spirit");
  const heads = putRow(sheet, 2, 0, ["Date", "Top basket °C", "Bottom °C", "Difference K"]);
  DATES.forEach((date, index) => put(sheet, 3 + index, 0, date));
  const some = (from: number, to: number) =>
    DATES.map(() => -kit.random.whole(2 * from, 2 * to) / 2);
  readings(kit, sheet, heads[1]!, some(15, 18));
  readings(kit, sheet, heads[2]!, some(19, 22));
  const spots = DATES.map((_, index) => {
    const [top, bottom] = [1, 2].map((column) => a1({ sheet: sheet.name, row: 3 + index, column }));
    return put(sheet, 3 + index, 3, shown(`=${top}-${bottom}`, "0.0"));
  });
  kit.marked.formulaColumns.push({ spots, heading: heads[3]!, fixed: [] });
  note(kit, sheet, 9, 0, "Defrosted at Easter. Seal on the lid is going.");
}

/** Three recipes, each on its page, every batch that was made of it. */
function batchBook(kit: Kit): void {
  kit.make(3).forEach((made, index) => page(kit, made, `Book ${["I", "II", "III"][index]}`));
  freezer(kit);
}

/** A batch book. */
export const batchBooks: readonly Layout[] = [
  { name: "batch book, a row for each making", language: "en", build: batchBook },
];
