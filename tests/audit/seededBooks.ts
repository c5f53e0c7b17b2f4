import { callFunction } from "../../src/worksheet/callFunction";
import { cellName } from "../../src/workbook/address";
import type { ShortCell } from "../../src/workbook/sheetFromRows";
import { formula, type Rows } from "./bookOf";

/** A recipe to be laid out: names with grams. */
export type Grams = readonly (readonly [name: string, grams: number])[];

/** Recipes of our own making, in plain catalogue names. */
export const RECIPES: readonly Grams[] = [
  [
    ["water", 480],
    ["sucrose", 170],
    ["lemon juice", 120],
    ["glucose", 25],
  ],
  [
    ["whole milk", 620],
    ["cream 35 % fat", 180],
    ["skim milk powder", 40],
    ["sucrose", 130],
  ],
  [
    ["strawberry", 520],
    ["water", 160],
    ["sucrose", 140],
    ["glucose syrup DE 42", 60],
    ["pistachios", 50],
  ],
  [
    ["water", 700],
    ["sucrose", 110],
    ["fructose", 30],
    ["sodium chloride", 2],
    ["spirit 40 % vol", 30],
  ],
  [
    ["apricot", 450],
    ["water", 200],
    ["refined sugar", 120],
    ["lime juice", 25],
    ["guar gum", 2],
  ],
];

export const freezingPointC = (grams: Grams): number =>
  Number(
    callFunction(
      "FREEZINGPOINT",
      grams.map(([name]) => [name]),
      grams.map(([, value]) => [value]),
    )[0]?.[0],
  );

/** A sheet with the cells in which a mutation can be put. */
export interface Layout {
  readonly title: string;
  readonly rows: ShortCell[][];
  readonly nameCell: (index: number) => readonly [row: number, column: number];
  readonly amountCell: (index: number) => readonly [row: number, column: number];
  readonly total: readonly [row: number, column: number] | null;
  readonly freezing: readonly [row: number, column: number] | null;
  /** What the amounts are multiplied by on this sheet. */
  readonly scale: number;
}

const round = (value: number, digits = 2): number => Number(value.toFixed(digits));

/** Names one below the other from a corner, amounts beside them, a total and a freezing point below. */
function down(
  title: string,
  recipe: Grams,
  {
    headers,
    corner,
    side = 1,
    scale = 1,
    labels,
    more = [],
  }: {
    readonly headers: readonly [name: string, amount: string];
    readonly corner: readonly [row: number, column: number];
    readonly side?: 1 | -1;
    readonly scale?: number;
    readonly labels: readonly [total: string, freezing: string];
    readonly more?: readonly (readonly [header: string, value: (grams: number) => ShortCell])[];
  },
): Layout {
  const [top, left] = corner;
  const amounts = left + side;
  const rows: ShortCell[][] = Array.from({ length: top + recipe.length + 5 }, () => []);
  const put = (row: number, column: number, cell: ShortCell) => {
    const line = rows[row];
    if (line !== undefined) line[column] = cell;
  };
  put(0, 0, title);
  put(top, left, headers[0]);
  put(top, amounts, headers[1]);
  for (const [index, [name, grams]] of recipe.entries()) {
    put(top + 1 + index, left, name);
    put(top + 1 + index, amounts, round(grams * scale, 4));
    for (const [at, [header, value]] of more.entries()) {
      put(top, left + 2 + at, header);
      put(top + 1 + index, left + 2 + at, value(grams));
    }
  }
  const last = top + recipe.length;
  const sum = recipe.reduce((total, [, grams]) => total + grams * scale, 0);
  const range = `${cellName(top + 1, amounts)}:${cellName(last, amounts)}`;
  put(last + 1, left, labels[0]);
  put(last + 1, amounts, formula(`SUM(${range})`, round(sum, 4)));
  put(last + 3, left, labels[1]);
  put(last + 3, amounts, round(freezingPointC(recipe)));
  return {
    title,
    rows: rows.map((row) => Array.from(row, (cell) => cell)),
    nameCell: (index) => [top + 1 + index, left],
    amountCell: (index) => [top + 1 + index, amounts],
    total: [last + 1, amounts],
    freezing: [last + 3, amounts],
    scale,
  };
}

/** Names in a row, this recipe and a sweeter one below, with total and freezing point beside. */
function across(recipe: Grams): Layout {
  const line = (title: string, grams: Grams, row: number): ShortCell[] => [
    title,
    ...grams.map(([, value]) => value),
    formula(
      `SUM(B${row}:${cellName(row - 1, grams.length)})`,
      grams.reduce((sum, [, value]) => sum + value, 0),
    ),
    round(freezingPointC(grams)),
  ];
  const other = recipe.map(([name, grams]) => [name, round(grams * 1.1, 1)] as const);
  const names = recipe.map(([name]) => name);
  return {
    title: "recipes in rows",
    rows: [
      ["Recipe", ...names, "Total g", "Freezing point, °C"],
      line("first", recipe, 2),
      line("second", other, 3),
    ],
    nameCell: (index) => [0, index + 1],
    amountCell: (index) => [1, index + 1],
    total: [1, recipe.length + 1],
    freezing: [1, recipe.length + 2],
    scale: 1,
  };
}

/** Every layout of a recipe, all of them right. */
export function layoutsOf(recipe: Grams): Layout[] {
  const price = ["Price per kg", () => 2.4] as const;
  const note = ["Notes", () => "sieved"] as const;
  return [
    down("plain", recipe, {
      headers: ["Ingredient", "Amount (g)"],
      corner: [1, 0],
      labels: ["Total", "Freezing point"],
    }),
    down("costing", recipe, {
      headers: ["Item", "Weight g"],
      corner: [3, 1],
      labels: ["Total weight", "Freezes at °C"],
      more: [price, note],
    }),
    down("deutsch", recipe, {
      headers: ["Zutat", "Menge [g]"],
      corner: [2, 0],
      labels: ["Summe", "Gefrierpunkt (°C)"],
      more: [["Preis €/kg", () => 3]],
    }),
    down("kilograms", recipe, {
      headers: ["Component", "Mass in kg"],
      corner: [4, 2],
      scale: 0.001,
      labels: ["Batch total (kg)", "Initial freezing point (°C)"],
    }),
    down("amounts first", recipe, {
      headers: ["What", "grams"],
      corner: [1, 3],
      side: -1,
      labels: ["Sum", "Freezing temperature"],
    }),
    across(recipe),
  ];
}

/** The same sheet with one cell changed. */
export function withCell(
  { rows }: Layout,
  [row, column]: readonly [number, number],
  cell: ShortCell,
): Rows {
  return rows.map((line, at) =>
    at !== row ? line : line.map((old, place) => (place === column ? cell : old)),
  );
}
