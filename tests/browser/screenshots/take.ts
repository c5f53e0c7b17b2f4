import path from "node:path";
import { recipeCells } from "../../../src/bench/demo/recipesSheet";
import { openPaneBench, type PaneBench } from "../paneBench";

// npx tsx tests/browser/screenshots/take.ts
// Draws the README's pictures of the demo book anew, beside this file: bench.png, curves.png, read-through.png.

const SIZE = { width: 1180, height: 720 };
const { sheet, firstRow } = recipeCells;

async function show(bench: PaneBench, view: string, cell: string): Promise<void> {
  await bench.select(sheet, cell);
  await bench.pane.getByRole("tab", { name: view, exact: true }).click();
  await bench.page.waitForTimeout(1500);
}

async function take(bench: PaneBench, name: string): Promise<void> {
  await bench.page.screenshot({ path: path.join(__dirname, `${name}.png`) });
  process.stdout.write(`${name}.png\n`);
}

async function main(): Promise<void> {
  const bench = await openPaneBench();
  const { page, pane } = bench;
  await page.setViewportSize(SIZE);
  await show(bench, "Bowl", `A${firstRow}`);
  await take(bench, "bench");
  await show(bench, "Curves", `A${firstRow + 7}`);
  await pane.getByRole("button", { name: /^Set “.*” beside the next recipe/ }).click();
  await show(bench, "Curves", `A${firstRow + 12}`);
  await take(bench, "curves");
  await show(bench, "Read-through", `C${firstRow + 12}`);
  await pane.getByRole("button", { name: "Read the workbook" }).click();
  await pane.getByRole("heading", { name: /finding/ }).waitFor();
  await take(bench, "read-through");
  await bench.close();
}

void main();
