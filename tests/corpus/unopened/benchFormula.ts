import { a1, addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed, type Listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { solution } from "../solution";
import { ENGLISH, thermometer } from "./words";

const VOICE: Voice = { ...ENGLISH, lead: "Write on the tub: contains" };

const BENCHES = [
  ["Bench 1", 0.5],
  ["Bench 2", 1],
  ["Bench 3", 1.5],
  ["Demo bench", 2],
] as const;

const SAID: readonly Said[] = [
  { label: "Freezing pt", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Depression", inCell: "K", states: "depression", as: "typed", decimals: 1 },
  { label: "Water in the kilo", inCell: "g", states: "water", as: "formula", format: "0" },
  { label: "In solution", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Ice by mass at −13 °C",
    ...{ inCell: "%", states: "ice of mix", as: "typed", temperatureC: -13, decimals: 0 },
  },
];

/** What each bench weighs, a column a bench. */
function benches(kit: Kit, list: Listed, top: number): Spot[] {
  const { sheet, amounts, end } = list;
  put(sheet, top - 1, 2, "Batches");
  return BENCHES.flatMap(([name, batches], at) => {
    const factor = put(sheet, top - 1, 3 + at, batches);
    const heading = put(sheet, top, 3 + at, `${name} (g)`);
    const spots = beside(kit, heading, amounts, {
      ...{ sheet, format: "0", fixed: [factor] },
      content: (spot) => `=${a1(spot)}*${fixed(factor)}`,
    });
    sumOf(kit, sheet, { row: end, column: 3 + at }, spots, "0");
    return spots;
  });
}

/** A formula for a kilo and what the benches make of it. */
function formula(kit: Kit, made: MadeRecipe, name: string): void {
  const sheet = addSheet(kit.marked.book, name);
  putRow(sheet, 0, 0, ["Module 7", made.title]);
  const list = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Step", "Ingredient", "Formula (g)"],
      cells: (item, grams, index) => [index + 1, item, grams],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, names, amounts, end } = list;
  const alsoAmounts = benches(kit, list, 4);
  put(sheet, end, 1, "Sum");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[2]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Aim for" });
  const last = tellIn(sheet, recipe, { row: next + 1, column: 1 }, VOICE);
  note(kit, sheet, last + 1, 1, "Taste with a clean spoon. Every time.");
}

/** What students work out on paper, and the marks for it. */
function theory(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Theory hour: why sugar keeps it soft");
  solution(kit, sheet, {
    ...{ top: 2, left: 0, count: 2 },
    headings: ["Added", "Grams added", "Molar mass (g/mol)", "Particles", "Mol of particles"],
    words: {
      water: ["Water in the beaker (g)", "Water in the beaker"],
      constant: "Cryoscopic constant (K kg/mol)",
      depression: "Lowers freezing by (K)",
      freezingPoint: "Expect ice from (°C)",
      proviso: (gap) => `This is the ideal law. Measured, the beaker is within ${gap} K of it.`,
    },
  });
  putRow(sheet, 14, 0, ["Question", "Marks"]);
  const marks = ["a", "b", "c", "d"].map((each, index) =>
    putRow(sheet, 15 + index, 0, [each, kit.random.whole(2, 6)]),
  );
  put(sheet, 19, 0, "Paper");
  sumOf(kit, sheet, { row: 19, column: 1 }, columnOf(marks, 1));
  thermometer(
    kit,
    sheet,
    { row: 14, column: 3 },
    {
      heads: ["Bench freezer", "Mon °C", "Thu °C"],
      lines: ["left", "middle", "right"],
      from: [
        [-20, -17],
        [-20, -17],
      ],
    },
  );
}

/** Two formulas for the benches and an hour of theory. */
function benchFormula(kit: Kit): void {
  const own = { sugar: "granulated sugar", "vodka 40 %": "vodka 40%", salt: "table salt" };
  kit.make(2).forEach((made, index) => {
    formula(kit, called(perKilogram(made), own), `Formula 7.${index + 1}`);
  });
  theory(kit, addSheet(kit.marked.book, "Theory"));
}

/** A pastry school's module. */
export const benchFormulas: readonly Layout[] = [
  {
    name: "pastry school module, one formula for four benches",
    language: "en",
    build: benchFormula,
  },
];
