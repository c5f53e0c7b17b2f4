import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, ofAlcohol, temperatures, upTo } from "../strollers/words";
import { fact, tellBy, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Camp nurse, please note:",
  honey: "honey, no under-ones",
  alcohol: "alcohol, adults only, nobody pregnant or driving",
  nuts: "nuts in whole pieces, choking hazard under 5",
  egg: "raw egg yolk, take to 71 °C or swap for pasteurised",
};

const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "Expect the first ice at", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Water in the list", inCell: "g", states: "water", as: "formula", format: "0" },
  { label: "Sugars, of the whole lot", inCell: "%", states: "sugar share", as: "typed" },
  {
    ...{ label: "Should be ice at −17 °C, of the water", inCell: "%", decimals: 0 },
    ...{ states: "ice of water", as: "typed", temperatureC: -17 },
  },
  ...ofAlcohol(made, "Alcohol in the list", "g"),
];

/** The list, what was really weighed on the day, and the difference. */
function weighing(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Planned (g)", "What", "Scale said (g)", "Over or under (g)"],
      cells: (name, grams) => [
        ...[grams, name, Math.max(1, Math.round(grams * kit.random.between(0.985, 1.02)))],
      ],
      ...{ name: 1, amount: 0 },
    },
  );
  const weighed = columnOf(rows, 2);
  beside(kit, heads[3]!, weighed, {
    ...{ sheet, format: "0" },
    content: (spot) => `=${a1(spot)}-${a1({ ...spot, column: 0 })}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "in the pail");
  sumOf(kit, sheet, { row: end, column: 2 }, weighed);
  if (trueValue(made, "freezing point", null) !== null) {
    const point = shown(`=RIME.FREEZINGPOINT(${span(names)},${span(weighed)})`, "0.00");
    fact(sheet, { row: end + 2, column: 1 }, "First ice, as really weighed (°C)", point);
  }
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: weighed, total, unit: "g", amountLabel: heads[0]! },
  });
}

const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const HOW = [
  "rock hard",
  "good scoops",
  "melted before the back tables",
  "a bit grainy",
  "all gone",
];

/** What came out each day, at the right. */
function log(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  const heads = putRow(sheet, 2, 5, [
    ...["Day", "Freezer (°C)", "Middle of the pail (°C)", "Hours in", "Scoops served"],
    ...["Left in the pail (g)", "How it came out"],
  ]);
  const half = (from: number, to: number) => shown(-random.whole(from, to) / 2, "0.0");
  const rows = DAYS.map((day, index) =>
    putRow(sheet, 3 + index, 5, [
      ...[day, half(31, 41), half(22, 29), random.whole(5, 22), random.whole(38, 82)],
      ...[10 * random.whole(0, 60), random.pick(HOW)],
    ]),
  );
  [1, 2].forEach((at) => temperatures(kit, heads[at]!, columnOf(rows, at)));
  const end = 3 + DAYS.length;
  put(sheet, end, 5, "Week");
  sumOf(kit, sheet, { row: end, column: 9 }, columnOf(rows, 4));
  sumOf(kit, sheet, { row: end, column: 10 }, columnOf(rows, 5));
  warmth(kit, sheet, columnOf(rows, 2), end + 2);
}

/** How many degrees each pail was over the wanted temperature, below the log. */
function warmth(kit: Kit, sheet: CorpusSheet, middles: readonly Spot[], row: number): void {
  const value = -kit.random.whole(13, 15);
  const words = { label: "Wanted in the middle (°C)", bare: "Wanted in the middle", value };
  const wanted = input(kit, sheet, { row, column: 5 }, words);
  const heading = put(sheet, 2, 12, "Too warm by (K)");
  beside(kit, heading, middles, {
    ...{ sheet, format: "0.0", fixed: [wanted] },
    content: (spot) => `=${a1(spot)}-${fixed(wanted)}`,
  });
}

/** One ice of the week, planned, weighed and looked at every day. */
function campLog(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Week 4");
  const given = madeOf(kit, 1, (made) => !isAlcoholic(made))[0]!;
  const made = called(upTo(given, 5000), { sugar: "granulated sugar" });
  put(sheet, 0, 0, `Week 4, ${made.title}: what I planned and what came out`);
  const recipe = weighing(kit, sheet, made);
  log(kit, sheet);
  const row = Math.max(recipe.total!.row + 4, 13);
  const next = say(sheet, recipe, { row, column: 1 }, answers(made));
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Going for" });
  const last = tellBy(sheet, recipe, { row: next + 2, column: 0 }, VOICE);
  note(kit, sheet, last + 1, 0, "Thursday the generator was off for an hour.");
}

/** A camp cook's log. */
export const campLogs: readonly Layout[] = [
  { name: "summer camp, planned, weighed and how it came out", language: "en", build: campLog },
];
