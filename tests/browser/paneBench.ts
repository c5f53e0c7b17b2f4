import { readFileSync } from "node:fs";
import type { Browser, Frame, Page } from "playwright-core";
import type { Serving } from "../../src/bench/server/serve";
import { parseRangeName } from "../../src/workbook/address";
import { startBenchServer } from "./benchServer";
import { foreignRequests, launchChromium } from "./chromium";

/** The bench with its demo book open and the pane ready beside it. */
export interface PaneBench {
  readonly page: Page;
  readonly pane: Frame;
  /** Requests that went to any other place than the bench's own server. */
  readonly foreign: readonly string[];
  readonly select: (sheet: string, address: string) => Promise<void>;
  readonly valueAt: (sheet: string, address: string) => Promise<unknown>;
}

export interface PaneBenches {
  readonly open: (scheme?: "light" | "dark") => Promise<PaneBench>;
  readonly close: () => Promise<void>;
}

async function openBench(browser: Browser, { url }: Serving, scheme: "light" | "dark") {
  const page = await browser.newPage({
    viewport: { width: 1300, height: 900 },
    colorScheme: scheme,
  });
  const foreign = foreignRequests(page, url);
  await page.goto(url);
  await page.waitForFunction(() => window.rimelineBench !== undefined);
  const frame = await page.waitForSelector("#pane");
  await page.frameLocator("#pane").getByRole("tab").first().waitFor({ timeout: 30000 });
  const pane = await frame.contentFrame();
  if (pane === null) throw new Error("The pane is not in a frame.");
  return {
    page,
    pane,
    foreign,
    select: async (sheet: string, address: string) => {
      const range = parseRangeName(address);
      if (range === null) throw new Error(`${address} is no range.`);
      await page.evaluate(
        ([name, cells]) => {
          window.rimelineBench?.grid.activate(name);
          window.rimelineBench?.grid.select(name, cells);
        },
        [sheet, range] as const,
      );
    },
    valueAt: (sheet: string, address: string) =>
      page.evaluate(([name, cell]) => window.rimelineBench?.valueAt(name, cell), [
        sheet,
        address,
      ] as const),
  };
}

/** Serves the bench and starts a browser for a file of tests. */
export async function startPaneBenches(): Promise<PaneBenches> {
  const serving = await startBenchServer();
  const browser = await launchChromium();
  return {
    open: (scheme = "light") => openBench(browser, serving, scheme),
    close: async () => {
      await browser.close();
      await serving.close();
    },
  };
}

const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** What axe-core objects to in the pane as it stands, in short. */
export async function objections(pane: Frame): Promise<readonly string[]> {
  // Evaluated, not added as a script: the page's own content security policy stays in force.
  await pane.evaluate(axe);
  return pane.evaluate(async () => {
    const { axe: run } = window as unknown as { axe: { run: () => Promise<AxeResult> } };
    interface AxeResult {
      violations: { id: string; nodes: { html: string }[] }[];
    }
    const { violations } = await run.run();
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  });
}
