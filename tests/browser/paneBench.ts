import { readFileSync } from "node:fs";
import type { Frame } from "playwright-core";
import { parseRangeName } from "../../src/workbook/address";
import { openBenchPage, valueAt, type BenchPage } from "./benchPage";

/** The bench with its demo book open and the pane ready beside it. */
export interface PaneBench extends BenchPage {
  readonly pane: Frame;
  readonly select: (sheet: string, address: string) => Promise<void>;
  readonly valueAt: (sheet: string, address: string) => Promise<unknown>;
  /** What was typed in a cell: its formula, else "". */
  readonly formulaAt: (sheet: string, address: string) => Promise<string>;
  readonly write: (sheet: string, address: string, content: string) => Promise<void>;
  readonly selected: () => Promise<{ sheet: string; row: number; column: number }>;
}

const rangeOf = (address: string) => {
  const range = parseRangeName(address);
  if (range === null) throw new Error(`${address} is no range.`);
  return range;
};

export async function openPaneBench(): Promise<PaneBench> {
  const bench = await openBenchPage();
  const { page } = bench;
  const element = await page.waitForSelector("#pane");
  await page.frameLocator("#pane").getByRole("tab").first().waitFor();
  const pane = await element.contentFrame();
  if (pane === null) throw new Error("The pane is not in a frame.");
  return {
    ...bench,
    pane,
    select: (sheet, address) =>
      page.evaluate(([name, range]) => window.rimelineBench!.grid.select(name, range), [
        sheet,
        rangeOf(address),
      ] as const),
    valueAt: (sheet, address) => valueAt(page, sheet, address),
    formulaAt: (sheet, address) =>
      page.evaluate(
        ([name, range]) => window.rimelineBench!.grid.read(name, range).formulas[0]![0]!,
        [sheet, rangeOf(address)] as const,
      ),
    write: (sheet, address, content) =>
      page.evaluate(
        async ([name, range, text]) => {
          window.rimelineBench!.grid.write(name, range, [[text]]);
          await window.rimelineBench!.grid.settled();
        },
        [sheet, rangeOf(address), content] as const,
      ),
    selected: () =>
      page.evaluate(() => {
        const { sheet, range } = window.rimelineBench!.grid.selection();
        return { sheet, row: range.top, column: range.left };
      }),
  };
}

const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** What axe-core objects to in the pane as it stands, in short. */
async function objections(pane: Frame): Promise<readonly string[]> {
  // Evaluated, not added as a script: the page's own content security policy stays in force.
  await pane.evaluate(axe);
  return pane.evaluate(async () => {
    interface AxeResult {
      violations: { id: string; nodes: { html: string }[] }[];
    }
    const { axe: run } = window as unknown as { axe: { run: () => Promise<AxeResult> } };
    const { violations } = await run.run();
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  });
}

/** What the pane is looked at under: its name, and what the page is told of the reader's wishes. */
export const THEMES = [
  ["light", { colorScheme: "light", forcedColors: "none" }],
  ["dark", { colorScheme: "dark", forcedColors: "none" }],
  ["forced colours", { colorScheme: "light", forcedColors: "active" }],
] as const;

/** What axe-core objects to in the view as it stands, and what is too wide, at each width of the pane. */
export async function objectionsAtWidths(
  { page, pane }: Pick<PaneBench, "page" | "pane">,
  name: string,
  widths: readonly number[] = [320, 350, 640],
): Promise<readonly string[]> {
  const found: string[] = [];
  for (const width of widths) {
    await page.evaluate((px) => {
      document.getElementById("pane")!.style.width = `${px}px`;
    }, width);
    found.push(...(await objections(pane)).map((one) => `${name}, ${width}: ${one}`));
    const overflow = await pane.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (overflow > 0) found.push(`${name}, ${width}: ${overflow} px too wide`);
  }
  return found;
}
