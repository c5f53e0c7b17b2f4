import { addSheet, put, putRow, shown } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { solution } from "../solution";
import { solutionRows } from "../solutionRows";
import { HOME } from "./voices";
import { readings, table } from "./words";

const ANSWERS: readonly Said[] = [
  { label: "Freezing point (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water in it (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Sugars per 100 g of its water (g)", states: "sugar per 100 g water", as: "typed" },
];

/** What the evening ends with. */
function tasting(kit: Kit): void {
  const made = kit.make(1)[0]!;
  const sheet = addSheet(kit.marked.book, "What we churn");
  put(sheet, 0, 0, `Group work: ${made.title}`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Ingredient", "Weight in g", "Weighed by"],
      cells: (item, grams, index) => [item, grams, `table ${1 + (index % 3)}`],
    },
  );
  put(sheet, end, 0, "In the machine");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const cells = { names, amounts, total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "To be served" });
  tellIn(sheet, recipe, { row: next + 1, column: 0 }, HOME);
  readings(
    kit,
    sheet,
    { row: 2, column: 4 },
    {
      heads: ["Group", "Scooped, it read (°C)"],
      labels: ["table 1", "table 2", "table 3"],
      ranges: [[-7, -3]],
    },
  );
}

const EVENINGS = [
  ["Evening", "Room", "Topic"],
  [shown(45916, "d mmm"), "kitchen 2", "sugars"],
  [shown(45923, "d mmm"), "kitchen 2", "milk and cream"],
  [shown(45930, "d mmm"), "kitchen 1", "fruit"],
];

/** One pan worked out together, one row each for the tables, and a churn at the end. */
function eveningClass(kit: Kit): void {
  const first = addSheet(kit.marked.book, "One pan");
  put(first, 0, 0, "Evening class, week 1: why sweet water freezes late");
  solution(kit, first, {
    ...{ top: 2, left: 0, count: 2 },
    headings: ["In the pan", "Grams", "g per mol", "Pieces it splits into", "mol of pieces"],
    words: {
      water: ["Tap water (g)", "Tap water"],
      constant: "Kf (K·kg/mol), for water",
      depression: "Freezing point goes down by (K)",
      freezingPoint: "It freezes at (°C)",
      proviso: (gap) =>
        `Worked with the ideal law. For so thin a solution that is good to ${gap} K.`,
    },
  });
  table(first, { row: 2, column: 7 }, EVENINGS);
  const second = addSheet(kit.marked.book, "Your tables");
  put(second, 0, 0, "One row for each table; check the last column with the thermometer");
  solutionRows(kit, second, {
    ...{ top: 2, left: 0, constant: "Kf water, K·kg/mol" },
    headings: [
      ...(["Stirred in", "g of it", "g of water", "Molar mass (g/mol)"] as const),
      ...(["Particles", "Molality (mol/kg)", "Lowered by (K)", "Freezes at (°C)"] as const),
    ],
    proviso: (gap) => `Ideal law again: here it misses the real value by no more than ${gap} K.`,
  });
  putRow(second, 13, 0, ["Thermometers", 5]);
  note(kit, second, 14, 0, "Ice water first: every thermometer has to show 0.");
  tasting(kit);
}

/** An adult evening class. */
export const eveningClasses: readonly Layout[] = [
  { name: "evening class, one pan, five tables and a churn", language: "en", build: eveningClass },
];
