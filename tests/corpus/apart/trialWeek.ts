import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "Panel told:",
  honey: "Honey inside, not under 12 months of age.",
  alcohol: "Alcohol inside, no under-18s, no one pregnant, no drivers.",
  nuts: "Whole nuts inside, choking hazard under 5 years.",
  egg: "Raw yolk inside, cook mix to 71 °C or use pasteurised.",
};

const OWN = {
  ...{ "skim milk powder": "SMP", "egg yolk": "egg yolks", "whole milk": "full-fat milk" },
  ...{ "glucose syrup DE 42": "glucose syrup 42 DE", "cocoa powder": "cocoa" },
};

/** Columns of one trial and a free one. */
const WIDTH = 4;
const FACTS = 17;

/** One trial: its sum over its lines, what it is like in rows that all trials share. */
function trial(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, index: number, cold: Spot): void {
  const column = index * WIDTH;
  put(sheet, 3, column, `Trial ${index + 4}`);
  put(sheet, 3, column + 1, made.title);
  const { heads, names, amounts } = listed(
    sheet,
    made,
    { row: 5, column },
    { heads: ["material", "g", "of mix"], cells: (name, grams) => [name, grams] },
  );
  put(sheet, 4, column, "charge");
  const total = sumOf(kit, sheet, { row: 4, column: column + 1 }, amounts);
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0%", fixed: [total] },
    content: (spot) => `=${a1(spot)}/${fixed(total)}`,
  });
  const lines = { names, amounts, alsoAmounts, amountLabel: heads[1]!, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, lines);
  const served = { temperature: cold, temperatureC: -14 };
  const next = say(sheet, recipe, { row: FACTS, column }, [
    { label: "f.p. (°C)", states: "freezing point", as: "formula" },
    { label: "f.p. depression (K)", states: "depression", as: "typed" },
    { label: "total water (g)", states: "water", as: "formula", format: "0" },
    { label: "in solution (g)", states: "dissolved", as: "typed", decimals: 0 },
    { label: "sugars, % of mix", states: "sugar share", as: "typed" },
    { label: "% of water frozen, cabinet", states: "ice of water", as: "formula", ...served },
    {
      ...{ label: "% of water frozen, −20 °C", states: "ice of water", as: "typed" },
      ...{ temperatureC: -20, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column, label: "aim" });
  tellIn(sheet, recipe, { row: FACTS + 9, column }, VOICE);
}

const TASTERS = ["HB", "RO", "TK", "WD", "MN"];

/** What the panel thought of each, out of nine, and the mean. */
function panel(kit: Kit, sheet: CorpusSheet): void {
  const row = FACTS + 12;
  put(sheet, row - 1, 0, "Panel, liking from 1 to 9");
  putRow(sheet, row, 0, ["taster", "trial 4", "trial 5", "trial 6"]);
  const cells = TASTERS.map((taster, index) => {
    const scores = [0, 1, 2].map(() => kit.random.whole(4, 9));
    return putRow(sheet, row + 1 + index, 0, [taster, ...scores]);
  });
  put(sheet, row + 6, 0, "mean");
  const means = [1, 2, 3].map((column) => {
    const [first, last] = [cells[0]![column]!, cells.at(-1)![column]!];
    return put(sheet, row + 6, column, shown(`=AVERAGE(${a1(first)}:${a1(last)})`, "0.0"));
  });
  const heading = { sheet: sheet.name, row: row + 6, column: 0 };
  kit.marked.formulaColumns.push({ spots: means, heading, fixed: [] });
}

/** Three trials beside each other, the panel under them, the freezer's week behind. */
function trialWeek(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Wk 31 trials");
  put(sheet, 0, 0, "Bench trials, week 31. Kilo charges, batch freezer no. 2");
  const [label, cold] = putRow(sheet, 1, 0, ["Tasting cabinet (°C)", -14]);
  marked.inputs.push({ label: label!, value: cold!, bare: "Tasting cabinet" });
  kit.make(3).forEach((made, index) => {
    trial(kit, sheet, called(perKilogram(made), OWN), index, cold!);
  });
  panel(kit, sheet);
  note(kit, sheet, FACTS + 20, 0, "Trial 5 drew from the machine a little early, judge it kindly.");
  const log = addSheet(marked.book, "Hardening room");
  put(log, 0, 0, "Hardening room, probe by the door");
  readings(
    kit,
    log,
    { row: 2, column: 0 },
    {
      heads: ["shift", "probe °C", "door left open (min)", "sign"],
      when: ["Mon am", "Mon pm", "Tue am", "Tue pm", "Wed am", "Wed pm"],
      tenths: [-312, -286],
      rest: () => [kit.random.whole(0, 9), kit.random.pick(TASTERS)],
    },
  );
}

/** A developer's week at the bench. */
export const trialWeeks: readonly Layout[] = [
  { name: "bench trials of a week beside each other", language: "en", build: trialWeek },
];
