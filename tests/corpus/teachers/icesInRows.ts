import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { resultAt, type ResultPlan } from "../results";
import { isAlcoholic, itemsOf, madeOf, temperatures } from "../strollers/words";
import { sideTable, under } from "./words";

const VOICE: Voice = {
  lead: "With",
  honey: "Honey: no good for under-ones (12 months).",
  alcohol: "Alcohol: over-18s only, never in pregnancy or before driving.",
  nuts: "Nuts left whole: under-5s may choke.",
  egg: "Yolk is raw: pasteurised, or 71 °C.",
};

const ROW = 5;

const SAID: readonly (readonly [string, ResultPlan])[] = [
  ["FP (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["FPD (K)", { states: "depression", as: "typed", decimals: 1 }],
  ["water (% of mix)", { states: "water", as: "typed", decimals: 0 }],
  ["dissolved (% of mix)", { states: "dissolved", as: "formula", format: "0" }],
  ["water frozen in our freezer (%)", { states: "ice of water", as: "formula", format: "0" }],
  ["sugars per 100 g water (g)", { states: "sugar per 100 g water", as: "typed", decimals: 0 }],
];

/** Each ice along its row, its lines in per cent, what it does at the right. */
function rows(kit: Kit, sheet: CorpusSheet, freezer: Spot): void {
  const words = { sugar: "sugar", water: "tap water", salt: "cooking salt" };
  const mades = madeOf(kit, 5, (made) => !isAlcoholic(made)).map((made) =>
    called(largestFirst(made), words),
  );
  const names = itemsOf(mades);
  putRow(sheet, ROW - 1, 0, ["no.", "ice"]);
  const items = putRow(sheet, ROW - 1, 2, names);
  const amountLabel = put(sheet, ROW - 2, 2, "% by mass");
  const right = 2 + names.length;
  put(sheet, ROW - 1, right, "sum");
  const heads = putRow(
    sheet,
    ROW - 1,
    right + 2,
    SAID.map(([label]) => label),
  );
  putRow(sheet, ROW - 1, right + 2 + SAID.length, ["goal", "tell people"]);
  for (const at of [0, 3]) {
    const spots = under(heads[at]!, mades.length);
    kit.marked.formulaColumns.push({ spots, heading: heads[at]!, fixed: [] });
  }
  mades.forEach((made, index) => {
    const row = ROW + index;
    putRow(sheet, row, 0, [index + 1, made.title]);
    const plan = { items, unit: "%", format: "0.0", amountLabel } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    SAID.forEach(([, said], at) => {
      const served = said.states.startsWith("ice")
        ? { ...said, temperature: freezer, temperatureC: -18 }
        : said;
      const place = { row, column: right + 2 + at };
      resultAt(sheet, recipe, heads[at]!, place, served, () => recipe.lines);
    });
    nameTarget(sheet, recipe, { row, column: right + 2 + SAID.length });
    tellIn(sheet, recipe, { row, column: right + 3 + SAID.length }, VOICE);
  });
}

/** Which freezer is how cold, and who reads it when. */
function rota(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Freezer rota");
  put(sheet, 0, 0, "Read it before you open it");
  const days = ["3 June", "4 June", "5 June", "6 June", "7 June"];
  const read = () => shown(-kit.random.whole(172, 188) / 10, "0.0");
  const lines = days.map((day, index) => [day, ["set 1", "set 2"][index % 2], read(), read()]);
  const words = ["Date", "Who", "Prep room (°C)", "Kitchen 2 (°C)"];
  const heads = sideTable(sheet, [2, 0], words, lines);
  heads.slice(2).forEach((heading) => temperatures(kit, heading, under(heading, days.length)));
  note(kit, sheet, 9, 0, "Above −15 °C: tell the technician.");
}

/** Five ices, a row each, on the food chemistry teacher's sheet. */
function icesInRows(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "All ices");
  put(sheet, 0, 0, "Food chemistry elective: what is in our ices and what it does to them");
  const [label, freezer] = putRow(sheet, 1, 0, ["our freezer (°C)", -18]) as [Spot, Spot];
  kit.marked.inputs.push({ label, value: freezer, bare: "our freezer" });
  rows(kit, sheet, freezer);
  note(kit, sheet, ROW + 6, 0, "FP = freezing point, FPD = its depression.");
  rota(kit);
}

/** An elective in food chemistry. */
export const icesInRowsSheets: readonly Layout[] = [
  { name: "food chemistry elective, an ice in each row", language: "en", build: icesInRows },
];
