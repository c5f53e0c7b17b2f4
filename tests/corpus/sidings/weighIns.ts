import { addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Fact } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { plainOf } from "../lodgers/swaps";
import { solutionRows } from "../solutionRows";
import { itemsOf } from "../strollers/words";
import { withLines, type MadeRecipe } from "../recipes";
import { degrees, formulaColumn, inEnglish, inRow, readings, sayAlong } from "./words";

const VOICE = inEnglish("Tray label: contains");

const FACTS: readonly Fact[] = [
  ["Freezing point (°C)", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Solids dissolved (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Ice in the mix at −16 °C (%)",
    { states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
  ],
];

const BENCHES = ["The card", "Bench 1", "Bench 2", "Bench 3", "Bench 4", "Bench 5"];

/** The same recipe as students weigh it: a little more here, a little less there. */
function weighed({ random }: Kit, made: MadeRecipe): MadeRecipe {
  const lines = made.lines.map((each) => ({
    ...{ ...each, grams: Math.max(2, Math.round(each.grams * random.between(0.97, 1.03))) },
  }));
  return stillMet(withLines(made, lines));
}

interface Table {
  readonly items: readonly Spot[];
  readonly heads: readonly Spot[];
}

/** What one bench weighed in; gives its total. */
function bench(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, at: number, table: Table): Spot {
  const { items, heads } = table;
  const row = 4 + at;
  const { column } = heads[0]!;
  put(sheet, row, 0, BENCHES[at]);
  const amountLabel = { sheet: sheet.name, row: 3, column: 0 };
  const plan = { items, row, sumColumn: column, unit: "g", amountLabel } as const;
  const grid = inRow(kit, sheet, made, plan);
  sayAlong(sheet, grid, FACTS, { row, column: column + 2 }, heads.slice(2));
  nameTarget(sheet, grid.recipe, { row, column: column + 6 });
  tellIn(sheet, grid.recipe, { row, column: column + 7 }, VOICE);
  return grid.recipe.total!;
}

/** The card and what five benches made of it. */
function weighIn(kit: Kit, sheet: CorpusSheet): void {
  const made = plainOf(kit);
  const plain = sound(kit, made);
  const own = { sugar: "granulated sugar", salt: "table salt", "whole milk": "full fat milk" };
  const mades = BENCHES.map((_, at) => called(at === 0 ? made : weighed(kit, plain), own));
  const names = itemsOf(mades);
  put(sheet, 0, 0, `Wednesday group, ${made.title.toLowerCase()}: what was really weighed in`);
  put(sheet, 3, 0, "g");
  const items = putRow(sheet, 3, 1, names);
  const heads = putRow(sheet, 3, 1 + names.length, [
    ...["Bowl in all (g)", "More or less than the card (g)", ...FACTS.map(([words]) => words)],
    ...["Into the machine at (°C)", "To be", "Label"],
  ]);
  const totals = mades.map((each, at) => bench(kit, sheet, each, at, { items, heads }));
  const rows = totals.slice(1).map((spot) => [spot]);
  const card = totals[0]!;
  formulaColumn(kit, sheet, heads[1]!, rows, (cell) => `${cell(0)}-${fixed(card)}`, "+0;-0;0", [
    card,
  ]);
  const warm = heads[5]!;
  const spots = rows.map(([spot]) => put(sheet, spot!.row, warm.column, degrees(kit, 4, 9)));
  readings(kit, warm, spots);
  note(kit, sheet, 4 + mades.length + 1, 0, "Bench 2 forgot to zero the scale, weighed twice.");
}

/** A food school's practical and its theory. */
function build(kit: Kit): void {
  weighIn(kit, addSheet(kit.marked.book, "Practical"));
  const sheet = addSheet(kit.marked.book, "Theory");
  put(sheet, 0, 0, "Before the practical: five glasses, one thing dissolved in each");
  solutionRows(kit, sheet, {
    ...{ top: 2, left: 0, constant: "Kf, water (K kg per mol)" },
    headings: [
      ...(["In the glass", "Put in (g)", "Water (g)", "Molar mass (g/mol)"] as const),
      ...(["Particles", "Molality (mol/kg)", "Lowered by (K)", "Freezes at (°C)"] as const),
    ],
    proviso: (gap) => `By the ideal law; true solutions of these strengths are within ${gap} K.`,
  });
}

/** A food school. */
export const weighIns: readonly Layout[] = [
  { name: "food school, the card and what five benches weighed in", language: "en", build },
];
