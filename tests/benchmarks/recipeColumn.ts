import type { Cell } from "../../src/foundation/cell";
import type { Workbook } from "../../src/workbook/model";
import { sheetFromRows } from "../../src/workbook/sheetFromRows";
import { gridFunctionOf, type GridFunction } from "../../src/workbook/univer/gridFunction";
import { openHeadlessGrid } from "../../src/workbook/univer/headlessGrid";
import { worksheetFunctions } from "../../src/worksheet/functions";

// npx tsx tests/benchmarks/recipeColumn.ts
// How long a column of 5,000 recipes of 8 ingredients takes from one formula in the grid's engine, beside
// a function of the same shape that only adds: what is left is the price of the physics.

const RECIPES = 5000;
const REPEATS = 5;
const INGREDIENTS = [
  ...["water", "sucrose", "glucose", "fructose"],
  ...["lactose", "sodium chloride", "ethanol", "glycerol"],
];

/** Adds each row: as little as a function of this shape can do. */
const rowSum: GridFunction = {
  name: "RIME.ROWSUM",
  summary: "Adds each row.",
  parameters: ["items", "grams"].map((name) => ({ name, description: name, optional: false })),
  invoke: ([, grams]) =>
    (grams as Cell[][]).map((row) => [row.reduce<number>((sum, cell) => sum + Number(cell), 0)]),
};

/** Every recipe differs a little from the one before, and from itself in another repeat. */
const recipe = (row: number, repeat: number): number[] =>
  INGREDIENTS.map((_name, item) =>
    item === 0 ? 500 + repeat + (row % 97) : 5 + ((row * (item + 3)) % 41),
  );

function bookWith(formula: string, repeat: number): Workbook {
  const rows = Array.from({ length: RECIPES }, (_, row) => recipe(row, repeat));
  const [first = [], ...others] = rows;
  const body = [[...first, { value: null, formula }], ...others];
  return {
    sheets: [sheetFromRows("Recipes", [INGREDIENTS, ...body])],
    names: [],
    calculation: "automatic",
    externalLinks: [],
  };
}

async function milliseconds(formula: string, functions: readonly GridFunction[]): Promise<number> {
  const times: number[] = [];
  for (let repeat = 0; repeat < REPEATS; repeat += 1) {
    // other amounts each time: an unchanged call would be answered from the functions' memory
    const grid = openHeadlessGrid(bookWith(formula, repeat), functions, () => true);
    const started = performance.now();
    const valueAt = await grid.recalculate();
    times.push(performance.now() - started);
    for (const row of [1, RECIPES]) {
      const value = valueAt(0, row, INGREDIENTS.length);
      if (typeof value !== "number") throw new Error(`${formula} gave ${JSON.stringify(value)}.`);
    }
    grid.close();
  }
  return times.sort((a, b) => a - b)[Math.floor(REPEATS / 2)] ?? NaN;
}

async function main(): Promise<void> {
  const functions = worksheetFunctions.map(gridFunctionOf);
  const range = `$A$1:$H$1,A2:H${RECIPES + 1}`;
  const trivial = await milliseconds(`RIME.ROWSUM(${range})`, [rowSum]);
  console.log(`${RECIPES} rows of ${INGREDIENTS.length} ingredients, median of ${REPEATS}:`);
  console.log(`  adding only        ${trivial.toFixed(0)} ms`);
  for (const name of ["FREEZINGPOINT", "ICEFRACTION"]) {
    const extra = name === "ICEFRACTION" ? ",-18" : "";
    const time = await milliseconds(`RIME.${name}(${range}${extra})`, functions);
    console.log(`  ${name.padEnd(18)} ${time.toFixed(0)} ms, ${(time / trivial).toFixed(1)} times`);
  }
}

void main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
