import { readFile } from "node:fs/promises";
import { sheet } from "../../src/bench/demo/cells";
import { bookToXlsx } from "../../src/bench/xlsx/bookToXlsx";
import { describeInBrowser } from "./chromium";
import { objectionsAtWidths, openPaneBench, THEMES, type PaneBench } from "./paneBench";

const SHEET = "Cherry ice";

/** A book with four faults: a text amount, one in a cell formatted as text, a misspelt name, a short total. */
const seededBook = () =>
  bookToXlsx({
    name: "x",
    names: [],
    sheets: [
      sheet(
        SHEET,
        [
          [{ value: "Ingredient" }, { value: "Amount (g)" }],
          [{ value: "water" }, { value: 500 }],
          [{ value: "sucrose" }, { value: 150 }],
          [{ value: "fructose" }, { value: "62,5" }],
          [{ value: "glucose" }, { value: "40", look: { numberFormat: "@" } }],
          [{ value: "lemon jiuce" }, { value: 40 }],
          [{ value: "Total" }, { value: 690, formula: "SUM(B2:B6)" }],
          [],
          [
            { value: "First ice (°C)" },
            { value: null, formula: "RIME.FREEZINGPOINT(A2:A4,B2:B4)" },
          ],
        ],
        [],
      ),
    ],
  });

describeInBrowser("the read-through of an opened workbook", () => {
  let bench: PaneBench;
  beforeAll(async () => {
    bench = await openPaneBench();
    bench.page.setDefaultTimeout(15_000);
    const bytes = await seededBook();
    await bench.page.setInputFiles("#open-file", {
      name: "Summer.xlsx",
      mimeType: "",
      buffer: Buffer.from(bytes),
    });
    await bench.page.waitForFunction(
      () => document.querySelector("#book-name")?.textContent === "Summer",
    );
    await bench.pane.getByRole("tab", { name: "Read-through" }).click();
  }, 300_000);
  afterAll(() => bench.close());

  const panel = () => bench.pane.locator('[role="tabpanel"]:not([hidden])');
  const button = (name: string | RegExp) => panel().getByRole("button", { name, exact: true });
  const said = (text: string | RegExp) => panel().getByText(text).first().waitFor();
  const read = async () => {
    await button(/^Read (the workbook|it again)$/).click();
    await button("Stop").waitFor({ state: "detached" });
    await panel()
      .getByRole("heading", { name: /finding/ })
      .waitFor();
  };
  /** Waits until the grid holds it: what was written is calculated a moment later. */
  const holds = async (address: string, value: unknown) => {
    for (let turn = 0; turn < 50; turn += 1) {
      if ((await bench.valueAt(SHEET, address)) === value) return;
      await bench.page.waitForTimeout(100);
    }
    expect(await bench.valueAt(SHEET, address)).toEqual(value);
  };

  test("finds the faults, and leaves sheet and selection as they are", async () => {
    await bench.select(SHEET, "D9");
    await read();
    for (const cell of ["B4", "B5", "A6"]) {
      await button(`Go to ${SHEET}!${cell}`).first().waitFor();
    }
    expect(await bench.selected()).toEqual({ sheet: SHEET, row: 8, column: 3 });
  }, 60_000);

  test("jumps to a cell", async () => {
    await button(`Go to ${SHEET}!B4`).first().click();
    await bench.page.waitForFunction(() => {
      const { range } = window.rimelineBench!.grid.selection();
      return range.top === 3 && range.left === 1;
    });
  });

  test("shows what a fix would write, writes it, and writes the old contents back", async () => {
    const total = Number(await bench.valueAt(SHEET, "B7"));
    await button(`Mend: ${SHEET}!B4`).click();
    await panel().getByRole("cell", { name: "“62,5”" }).waitFor();
    await panel().getByRole("cell", { name: "62.5", exact: true }).waitFor();
    expect(await bench.valueAt(SHEET, "B4")).toBe("62,5");
    await button("Write").click();
    await said(`Written and read again: ${SHEET}!B4.`);
    await holds("B4", 62.5);
    await holds("B7", total + 62.5); // the sheet's own sum counts it now
    await button("Write the old contents back").click();
    await said(`Written back: ${SHEET}!B4.`);
    await holds("B4", "62,5");
    await holds("B7", total);
  });

  test("a cell formatted as text takes the number, and the grid's own undo takes it all back at once", async () => {
    await button(`Mend: ${SHEET}!B5`).click();
    await said("number format: General, in place of text");
    await button("Write").click();
    await said(`Written and read again: ${SHEET}!B5.`);
    await holds("B5", 40);
    await bench.page.locator("canvas[id^=univer-sheet-main-canvas]").click({
      position: { x: 500, y: 300 },
    });
    await bench.page.keyboard.press("Control+z");
    await holds("B5", "40");
  });

  test("a cell that changed meanwhile is left alone and named", async () => {
    await bench.write(SHEET, "B4", "70");
    await button(`Mend: ${SHEET}!B4`).click();
    await button("Write").click();
    await said(new RegExp(`^Left alone.*${SHEET}!B4`));
    await bench.write(SHEET, "B4", "62,5");
    await read();
  });

  test("a finding is accepted by keyboard, kept in the workbook and known to the next reading", async () => {
    const { keyboard } = bench.page;
    await button(`Accept: ${SHEET}!A6`).first().focus();
    await keyboard.press("Enter");
    await keyboard.type("our own syrup");
    await keyboard.press("Enter");
    await said("Accepted: our own syrup");
    await button("Keep in the workbook").click();
    await said(/Kept on the new sheet “Accepted findings”/);
    await read();
    await said("Accepted: our own syrup");
    expect(await bench.valueAt("Accepted findings", "B3")).toBe("our own syrup");
  });

  test("what was read as a recipe is read differently by keyboard, and kept on request", async () => {
    const { keyboard } = bench.page;
    const range = `${SHEET}!A1:B7`;
    await panel()
      .getByText(/^What was read as a recipe/)
      .click();
    await button(`Read it differently: ${range}`).focus();
    await keyboard.press("Enter");
    await panel().getByLabel("Unit of the amounts").selectOption("kg");
    await panel()
      .getByLabel(/^Cells/)
      .press("Enter");
    await said(
      /As it was said, took A2:A6 for the ingredients and column B for the amounts \(kg\)/,
    );
    await button("Stop").waitFor({ state: "detached" });
    await bench.pane.waitForFunction(() => document.activeElement?.tagName === "H2");
    await button("Keep in the workbook").click();
    await said(/Kept on the new sheet “What is a recipe”/);
    await read();
    expect(await bench.valueAt("What is a recipe", "F3")).toBe("kg");
    await said(/As it was said, took A2:A6/);
    await button(`Take back: ${range}`).click();
    await button("Stop").waitFor({ state: "detached" });
    await said(/^Took A2:A6/);
    await button("Bring “What is a recipe” up to date").click();
    await said("“What is a recipe” is up to date.");
    expect(await bench.valueAt("What is a recipe", "A3")).toBeNull();
  }, 60_000);

  test("a report goes to a new sheet each time", async () => {
    await button("Report on a new sheet").click();
    await said("Written on the new sheet “Read-through”.");
    await button("Report on a new sheet").click();
    await said("Written on the new sheet “Read-through (2)”.");
    expect(await bench.valueAt("Read-through", "A1")).toMatch(/^Read-through of /);
    const { sheet: active } = await bench.selected();
    expect(active).toBe(SHEET);
  });

  test("the page is a file of its own", async () => {
    const [download] = await Promise.all([
      bench.page.waitForEvent("download"),
      button("Save as a page").click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^Read-through .*\.html$/);
    expect(await readFile(await download.path(), "utf8")).toContain("lemon jiuce");
  });

  test.each(THEMES)("nothing is objected to in %s, at 320, 350 and 640 px", async (name, media) => {
    const { page, pane } = bench;
    await page.emulateMedia(media);
    await button(`Mend: ${SHEET}!B4`).click();
    await button(`Accept: ${SHEET}!B5`).first().click();
    await button(`Read it differently: ${SHEET}!A1:B7`).click();
    const found = await objectionsAtWidths(bench, name, [640, 350, 320]);
    const folder = process.env["SCREENSHOTS_TO"];
    if (folder !== undefined) {
      const height = await pane.evaluate(() => document.documentElement.scrollHeight);
      await page.setViewportSize({ width: 1440, height: Math.min(2400, height + 120) });
      await page.screenshot({ path: `${folder}/readThrough ${name}.png` });
      await page.setViewportSize({ width: 1440, height: 860 });
    }
    expect(found).toEqual([]);
    await button(`Mend: ${SHEET}!B4`).click();
    await button(`Accept: ${SHEET}!B5`).first().click();
    await button(`Read it differently: ${SHEET}!A1:B7`).click();
  });

  test("nothing was asked of any other host, and the page reported no error", () => {
    expect(bench.foreign).toEqual([]);
    expect(bench.errors).toEqual([]);
  });
});
