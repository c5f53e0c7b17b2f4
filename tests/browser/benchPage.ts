import type { Browser, Page } from "playwright-core";
import type { Serving } from "../../src/bench/server/serve";
import { startBenchServer } from "./benchServer";
import { foreignRequests, launchChromium } from "./chromium";

const READY_WITHIN_MS = 15_000; // from the address to a grid that can be worked in

/** The bench open in a browser of its own, shared by the tests of one file. */
export interface BenchPage {
  readonly page: Page;
  readonly url: string;
  /** Addresses asked of other hosts, and what the page reported as errors: both stay empty. */
  readonly foreign: readonly string[];
  readonly errors: readonly string[];
  readonly readyAfterMs: number;
  readonly close: () => Promise<void>;
}

/** Serves the bench, opens it and waits until its grid, its functions and the pane's frame are there. */
export async function openBenchPage(): Promise<BenchPage> {
  const serving: Serving = await startBenchServer();
  const browser: Browser = await launchChromium();
  const page = await browser.newPage({ viewport: { width: 1440, height: 860 } });
  const foreign = foreignRequests(page, serving.url);
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  const started = Date.now();
  await page.goto(serving.url);
  await page.waitForFunction(() => window.rimelineBench !== undefined, undefined, {
    timeout: READY_WITHIN_MS,
  });
  const readyAfterMs = Date.now() - started;
  await page.waitForFunction(() => document.querySelector("iframe")?.src.endsWith("/pane.html"));
  return {
    page,
    url: serving.url,
    foreign,
    errors,
    readyAfterMs,
    close: async () => {
      await browser.close();
      await serving.close();
    },
  };
}

type Inputs = readonly (readonly (string | number | boolean | null)[])[];

/** Puts contents into a new sheet from A1 on, shows it, and waits until all is calculated. */
export function newSheet(page: Page, name: string, inputs: Inputs): Promise<void> {
  return page.evaluate(
    async ([sheet, rows]) => {
      const { grid } = window.rimelineBench!;
      grid.addSheet(sheet);
      grid.activate(sheet);
      const right = Math.max(...rows.map((row) => row.length)) - 1;
      if (rows.length > 0) {
        grid.write(sheet, { top: 0, left: 0, bottom: rows.length - 1, right }, rows);
      }
      await grid.settled();
    },
    [name, inputs] as const,
  );
}

export const valueAt = (page: Page, sheet: string, address: string): Promise<unknown> =>
  page.evaluate(([s, a]) => window.rimelineBench!.valueAt(s, a), [sheet, address] as const);

// Sizes of the grid's own headings and of a plain cell, in pixels.
const ROW_HEADING = 46;
const COLUMN_HEADING = 20;
const COLUMN = 88;
const ROW = 24;

/** Clicks into a cell of a sheet with plain columns and rows, with the real mouse. */
export async function clickCell(page: Page, row: number, column: number): Promise<void> {
  const box = await page.locator("canvas[id^=univer-sheet-main-canvas]").boundingBox();
  if (box === null) throw new Error("The grid's canvas is not to be seen.");
  const x = box.x + ROW_HEADING + column * COLUMN + COLUMN / 2;
  const y = box.y + COLUMN_HEADING + row * ROW + ROW / 2;
  await page.mouse.click(x, y);
  await page.waitForFunction(
    ([r, c]) => {
      const { range } = window.rimelineBench!.grid.selection();
      return range.top === r && range.left === c;
    },
    [row, column] as const,
  );
}
