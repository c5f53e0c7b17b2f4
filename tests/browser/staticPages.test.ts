import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { helpSite } from "../../src/help/helpSite";
import { validationPage } from "../validation/validationPage";
import { describeInBrowser, launchChromium } from "./chromium";

const pages = [...helpSite(), { name: "validation.html", html: validationPage() }];
const AXE = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** How far a page reaches to the right. */
const reachOf = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth);

interface Objection {
  readonly id: string;
  readonly nodes: readonly { readonly html: string }[];
}

/** What axe objects to in the page as it stands. */
async function objections(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const found = await page.evaluate(async () => {
    const axe = (window as unknown as { axe: { run(): Promise<{ violations: Objection[] }> } }).axe;
    return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`);
  });
  return found;
}

describeInBrowser("the pages of the help and the validation page", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  }, 60_000);
  afterAll(() => browser.close());

  test.each(["light", "dark"] as const)("fit 320 px, %s", async (colorScheme) => {
    const page = await browser.newPage({ viewport: { width: 320, height: 640 }, colorScheme });
    for (const { name, html } of pages) {
      await page.setContent(html);
      expect({ name, reach: await reachOf(page) }).toEqual({ name, reach: 320 });
    }
    await page.close();
  });

  test("fit a printed sheet, dark ink on light paper, whatever the screen's colours", async () => {
    const page = await browser.newPage({
      viewport: { width: 680, height: 900 },
      colorScheme: "dark",
    });
    await page.emulateMedia({ media: "print" });
    for (const { name, html } of pages) {
      await page.setContent(html);
      expect({ name, reach: await reachOf(page) }).toEqual({ name, reach: 680 });
      const ink = await page.evaluate(() => getComputedStyle(document.body).color);
      expect(ink).toBe("rgb(28, 43, 46)");
      expect(await page.locator("nav").isVisible()).toBe(false);
    }
    await page.close();
  });

  test.each(["light", "dark"] as const)(
    "axe finds nothing to object to, %s",
    async (scheme) => {
      const page = await browser.newPage({
        viewport: { width: 1000, height: 900 },
        colorScheme: scheme,
      });
      const chosen = ["index.html", "freezingpoint.html", "working.html", "validation.html"];
      for (const { html } of pages.filter(({ name }) => chosen.includes(name))) {
        await page.setContent(html);
        expect(await objections(page)).toEqual([]);
      }
      await page.close();
    },
    120_000,
  );
});
