/**
 * `npx tsx tests/benchmarks/paneLongestTask.ts`: the pane's longest main-thread tasks, in Chromium, while every
 * view is walked over a book of 200 ingredients: once as one recipe of 200 rows, once as 8 recipes of 25. Prints,
 * for each view and step, the longest task in ms (nothing below 50 ms is told by the browser) and the longest of all.
 * The grid runs on the same thread; a task in which only the grid or several pages worked is marked.
 */
import { ingredients } from "../../src/catalogue/ingredients";
import { newSheet } from "../browser/benchPage";
import { openPaneBench, type PaneBench } from "../browser/paneBench";

type Cell = string | number;
const ROWS = 200;
const RECIPES = 8;
const SETTLE_MS = 1200;
const names = ingredients
  .filter(({ group }) => group !== "alcohol")
  .map(({ name }) => name)
  .slice(0, ROWS);
const grams = (at: number): number => (at === 0 ? 3000 : 5 + ((at * 37) % 60));
const lines = Array.from({ length: ROWS }, (_, at): [string, number] => [
  at === 0 ? "water" : (names[at % names.length] ?? "sucrose"),
  grams(at),
]);

/** One recipe of 200 rows, or several of 25 side by side with a free column between. */
const oneRecipe: Cell[][] = [["Ingredient", "Amount (g)"], ...lines];
const perRecipe = ROWS / RECIPES;
const manyRecipes: Cell[][] = Array.from({ length: perRecipe + 1 }, (_, row) =>
  Array.from({ length: RECIPES }, (_recipe, at): Cell[] => {
    if (row === 0) return ["Ingredient", "Amount (g)", ""];
    const [name, amount] = lines[at * perRecipe + row - 1] ?? ["water", 1];
    return row === 1 ? ["water", 600, ""] : [name, amount, ""];
  }).flat(),
);

interface Task {
  readonly ms: number;
  readonly name: string;
}

async function watch({ pane }: PaneBench): Promise<void> {
  await pane.evaluate(() => {
    const seen: { ms: number; name: string }[] = [];
    Object.assign(window, { longTasks: seen });
    new PerformanceObserver((list) => {
      for (const { duration, name } of list.getEntries()) seen.push({ ms: duration, name });
    }).observe({ type: "longtask" });
  });
}

/** What was told since the last look, once nothing has been told for a while. */
async function taken({ pane, page }: PaneBench): Promise<readonly Task[]> {
  const all: Task[] = [];
  for (let quiet = false; !quiet;) {
    await page.waitForTimeout(SETTLE_MS);
    const fresh = await pane.evaluate(() =>
      (window as unknown as { longTasks: Task[] }).longTasks.splice(0),
    );
    quiet = fresh.length === 0;
    all.push(...fresh);
  }
  return all;
}

const WORK = "self";
let longestMs = 0;
function report(step: string, tasks: readonly Task[]): void {
  const own = tasks.filter(({ name }) => name === WORK).map(({ ms }) => Math.round(ms));
  const other = tasks.filter(({ name }) => name !== WORK).map(({ ms }) => Math.round(ms));
  longestMs = Math.max(longestMs, ...own);
  const shown = (list: readonly number[]) =>
    [...list]
      .sort((a, b) => b - a)
      .slice(0, 6)
      .join(", ");
  const beside = other.length === 0 ? "" : `   beside it, grid: ${shown(other)}`;
  console.log(`${step.padEnd(46)} ${own.length === 0 ? "< 50" : shown(own)}${beside}`);
}

async function walk(bench: PaneBench, sheet: string): Promise<void> {
  const { pane } = bench;
  const panel = pane.locator('[role="tabpanel"]:not([hidden])');
  const step = async (name: string, act: () => Promise<unknown>) => {
    await act();
    report(`${sheet}: ${name}`, await taken(bench));
  };
  const tab = (name: string) => pane.getByRole("tab", { name }).click();
  await step("select, Bowl", async () => {
    await tab("Bowl");
    await bench.select(sheet, "A3");
  });
  await step("Bowl, target", () => panel.getByLabel("Meant to be").selectOption("scooped at −13"));
  await step("Bowl, temperature", () => panel.getByLabel("Served at").fill("-9"));
  await step("Steer", () => tab("Steer"));
  await step("Steer, find", () =>
    panel.getByRole("button", { name: "Find the smallest change" }).click(),
  );
  await step("Batch", () => tab("Batch"));
  await step("Curves", () => tab("Curves"));
  for (const picture of ["state", "held", "movers"]) {
    await step(`Curves, ${picture}`, () => panel.getByLabel("Picture").selectOption(picture));
  }
  await step("Aims", () => tab("Aims"));
  await step("Larder", () => tab("Larder"));
  const search = panel.getByRole("searchbox");
  if (await search.isVisible()) {
    await step("Larder, search", () => search.fill("honey, average"));
    await step("Larder, entry", () => panel.locator("button.hit").first().click());
  }
  await step("Notebook", () => tab("Notebook"));
  await step("Why", () => tab("Why"));
  await step("Read-through", async () => {
    await tab("Read-through");
    await panel.getByRole("button", { name: /^Read (the|it)/ }).click();
    await panel.getByRole("heading", { name: /finding|Nothing/ }).waitFor({ timeout: 120_000 });
  });
}

async function run(): Promise<void> {
  const bench = await openPaneBench();
  bench.page.setDefaultTimeout(30_000);
  try {
    await newSheet(bench.page, "Long", oneRecipe);
    await newSheet(bench.page, "Many", manyRecipes);
    await watch(bench);
    await taken(bench);
    for (const sheet of ["Many", "Long"]) await walk(bench, sheet);
    console.log(`Longest task of the pane: ${longestMs === 0 ? "below 50" : longestMs} ms`);
  } finally {
    await bench.close();
  }
}

run().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
