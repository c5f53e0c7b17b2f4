import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { again, namesOf } from "../layouts/marking";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { resultAt, type ResultPlan } from "../results";

const VOICE: Voice = {
  lead: "contains",
  honey: "honey: no babies under 12 months.",
  alcohol: "alcohol: no children, no drivers, not in pregnancy.",
  nuts: "whole nuts: children under 5 might choke.",
  egg: "raw yolk: heated to 71 °C, else use pasteurised.",
};

const OWN = { sugar: "sugar (white)", "lemon juice": "fresh lemon juice", mango: "mangoes" };

const PLANS: readonly (readonly [string, ResultPlan])[] = [
  ["fp °C", { states: "freezing point", as: "formula" }],
  ["dT K", { states: "depression", as: "typed" }],
  ["water g", { states: "water", as: "formula", format: "0" }],
  ["sugars % w/w", { states: "sugar share", as: "typed", decimals: 1 }],
  ["ice % of water @ −15 °C", { states: "ice of water", as: "typed", temperatureC: -15 }],
];

const DATES = ["3/2", "10/2", "17/2", "24/2", "3/3"];
const VERDICTS = ["icy", "lovely", "bit sweet", "slumped", "M. had seconds"];

interface Pages {
  readonly items: readonly Spot[];
  readonly amountLabel: Spot;
  readonly heads: readonly Spot[];
}

/** A trial along its row. */
function trial(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  index: number,
  pages: Pages,
): Spot[] {
  const { items, amountLabel, heads } = pages;
  const row = 4 + index;
  putRow(sheet, row, 0, [DATES[index], made.title]);
  const recipe = alongRow(kit, sheet, made, row, { items, unit: "g", format: "0", amountLabel });
  PLANS.forEach(([, plan], at) => {
    const label = heads[1 + at]!;
    resultAt(sheet, recipe, label, { row, column: label.column }, plan, () => recipe.lines);
  });
  const end = heads.at(-1)!.column;
  const { total, results } = recipe;
  const water = results.find(({ states }) => states === "water");
  const wet = put(sheet, row, end - 4, water && shown(`=${a1(water.spot)}/${a1(total!)}`, "0.0%"));
  const drawn = put(sheet, row, end - 3, shown(-kit.random.whole(40, 65) / 10, "0.0"));
  nameTarget(sheet, recipe, { row, column: end - 2 });
  tellIn(sheet, recipe, { row, column: end - 1 }, VOICE);
  put(sheet, row, end, kit.random.pick(VERDICTS));
  return [wet, drawn];
}

/** Every trial a row, the ingredients across. */
function sorbetNotebook(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "trials");
  put(sheet, 0, 0, "churn trials, one a week, all weights in grams");
  const bases = kit.make(3);
  const more = bases.map((made) => (made.seeded === undefined ? again(kit, made) : made));
  const mades = [...bases, ...more.filter((made) => made.seeded === undefined)]
    .slice(0, DATES.length)
    .map((made) => called(made, OWN));
  const amountLabel = put(sheet, 2, 2, "grams");
  putRow(sheet, 3, 0, ["date", "which"]);
  const items = putRow(sheet, 3, 2, namesOf(mades));
  const heads = putRow(sheet, 3, 2 + items.length, [
    ...["sum g", ...PLANS.map(([words]) => words)],
    ...["wet", "drawn at °C", "aim", "warn eaters", "verdict"],
  ]);
  const rows = mades.map((made, index) =>
    trial(kit, sheet, made, index, { items, amountLabel, heads }),
  );
  const [wet, drawn] = heads.slice(-5) as [Spot, Spot];
  kit.marked.formulaColumns.push({ spots: columnOf(rows, 0), heading: wet, fixed: [] });
  temperatures(kit, drawn, columnOf(rows, 1));
  const row = 6 + mades.length;
  putRow(sheet, row, 0, ["churn", shown(kit.random.whole(22, 34), "0"), "min, lid on"]);
  note(kit, sheet, row + 1, 0, "bowl needs a full day in the freezer, half a day is not enough");
}

/** Someone's notebook of trials. */
export const sorbetNotebooks: readonly Layout[] = [
  { name: "churn trials at home, a row a week", language: "en", build: sorbetNotebook },
];
