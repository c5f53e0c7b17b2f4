import { newSheet, openBenchPage } from "../browser/benchPage";

// Prints how long the bench takes for a column of recipes filled from one cell. Not a test: machines differ.
// Run: npx tsx tests/benchmarks/benchColumn.ts

const RECIPES = 5000;
const ITEMS = [
  "water",
  "whole milk",
  "cream 35 % fat",
  "skim milk powder",
  "sucrose",
  "dextrose powder (monohydrate)",
  "glucose syrup DE 42",
  "fine salt",
];

const grams = (row: number): number[] => [
  200 + (row % 7),
  400,
  150 + (row % 11),
  30,
  120 + (row % 40),
  20,
  30 + (row % 13),
  1,
];

async function main(): Promise<void> {
  const { page, readyAfterMs, close } = await openBenchPage();
  await newSheet(page, "Many", [ITEMS, ...Array.from({ length: RECIPES }, (_, row) => grams(row))]);
  const spentMs = (input: string | number, row: number, column: number): Promise<number> =>
    page.evaluate(
      async ([text, top, left]) => {
        const { grid } = window.rimelineBench!;
        const started = performance.now();
        grid.write("Many", { top, left, bottom: top, right: left }, [[text]]);
        await grid.settled();
        return performance.now() - started;
      },
      [input, row, column] as const,
    );
  const filled = await spentMs(`=RIME.FREEZINGPOINT(A1:H1,A2:H${RECIPES + 1})`, 1, 8);
  const again = await spentMs(201, 1, 0);
  const values = await page.evaluate(
    (last) =>
      window.rimelineBench!.grid.read("Many", { top: 1, left: 8, bottom: last, right: 8 }).values,
    RECIPES,
  );
  const numbers = values.filter(([value]) => typeof value === "number").length;
  console.log(`grid ready after ${readyAfterMs} ms`);
  console.log(
    `${RECIPES} recipes of ${ITEMS.length} ingredients from one cell: ${filled.toFixed(0)} ms`,
  );
  console.log(`all of them again after one amount changed: ${again.toFixed(0)} ms`);
  console.log(
    `${numbers} of them are numbers (includes up to 100 ms in which the grid gathers changes)`,
  );
  await close();
}

void main();
