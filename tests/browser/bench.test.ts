import { readFile } from "node:fs/promises";
import { recipes } from "../../src/bench/demo/kitchen";
import { demoBook } from "../../src/bench/demo/demoBook";
import { recipeCells } from "../../src/bench/demo/recipesSheet";
import { sheet } from "../../src/bench/demo/cells";
import { bookToXlsx } from "../../src/bench/xlsx/bookToXlsx";
import { parseA1, splitSheet } from "../../src/bench/address";
import { isProblem } from "../../src/foundation/problem";
import { readWorkbook } from "../../src/workbook/readWorkbook";
import { callFunction } from "../../src/worksheet/callFunction";
import { clickCell, newSheet, openBenchPage, valueAt, type BenchPage } from "./benchPage";
import { describeInBrowser } from "./chromium";

const MESSAGE_LINE = "#message";
// CRC Handbook of Chemistry and Physics, "Concentrative properties of aqueous solutions": sucrose.
const CRC_SUCROSE_26_PERCENT_C = -2.12; // at 26 mass %, printed to 0.01 K

describeInBrowser("The bench in Chromium", () => {
  let bench: BenchPage;
  beforeAll(async () => {
    bench = await openBenchPage();
  }, 180_000);
  afterAll(() => bench.close());

  test("is ready to work in within 15 seconds", () => {
    expect(bench.readyAfterMs).toBeLessThan(15_000);
  });

  test("a formula typed at the keyboard shows its value", async () => {
    const { page } = bench;
    await newSheet(page, "Typed", [
      ["water", "sucrose"],
      [74, 26],
    ]);
    await clickCell(page, 1, 3);
    await page.keyboard.type("=RIME.FREEZINGPOINT(A1:B1,A2:B2)");
    await page.keyboard.press("Enter");
    const value = await valueAt(page, "Typed", "D2");
    expect(Math.abs(Number(value) - CRC_SUCROSE_26_PERCENT_C)).toBeLessThan(0.03);
    expect(await page.textContent(MESSAGE_LINE)).toBe("");
  });

  test("one cell fills a column, and a wrong amount in row 17 spoils row 17 only", async () => {
    const { page } = bench;
    const rows = Array.from({ length: 30 }, (_, index) => [200, index === 15 ? -70 : 40 + index]);
    await newSheet(page, "Column", [["water", "sucrose"], ...rows]);
    await clickCell(page, 1, 2);
    await page.keyboard.type("=RIME.FREEZINGPOINT(A1:B1,A2:B31)");
    await page.keyboard.press("Enter");
    await page.evaluate(() => window.rimelineBench!.grid.settled());
    const values = await page.evaluate(
      () =>
        window.rimelineBench!.grid.read("Column", { top: 1, left: 2, bottom: 30, right: 2 }).values,
    );
    const column = values.map(([value]) => value);
    expect(column[15]).toEqual({ error: "#VALUE!" });
    expect(column.filter((value) => typeof value === "number" && value < 0)).toHaveLength(29);
  });

  test("the selected cell's error is explained below the formula bar", async () => {
    const { page } = bench;
    await clickCell(page, 16, 2);
    await page.waitForFunction(() => document.querySelector("#message")?.textContent !== "");
    const sentence = await page.textContent(MESSAGE_LINE);
    expect(sentence).toContain("-70");
    expect(sentence).toContain("sucrose");
    await clickCell(page, 15, 2);
    await page.waitForFunction(() => document.querySelector("#message")?.textContent === "");
  });

  test("an unknown name is answered with the nearest one", async () => {
    const { page } = bench;
    await newSheet(page, "Unknown", [
      ["water", "sucrsoe"],
      [200, 70],
    ]);
    await clickCell(page, 1, 3);
    await page.keyboard.type("=RIME.FREEZINGPOINT(A1:B1,A2:B2)");
    await page.keyboard.press("Enter");
    expect(await valueAt(page, "Unknown", "D2")).toEqual({ error: "#N/A" });
    await clickCell(page, 1, 3);
    await page.waitForFunction(() => document.querySelector("#message")?.textContent !== "");
    expect(await page.textContent(MESSAGE_LINE)).toMatch(/sucrsoe.*sucrose/);
  });

  test("every recipe of the demo has the number the functions give outside the grid", async () => {
    const { page } = bench;
    const cellsOf = (reference: string) => {
      const { sheet: name, address } = splitSheet(reference);
      const range = parseA1(address)!;
      const from = demoBook.sheets.find((each) => each.name === (name ?? recipeCells.sheet))!;
      return Array.from({ length: range.bottom - range.top + 1 }, (_, r) =>
        Array.from(
          { length: range.right - range.left + 1 },
          (__, c) => from.rows[range.top + r]?.[range.left + c]?.value ?? null,
        ),
      );
    };
    expect(recipes.length).toBeGreaterThanOrEqual(10);
    for (const [index, { name }] of recipes.entries()) {
      const row = recipeCells.firstRow + index;
      const [[expected]] = callFunction(
        "FREEZINGPOINT",
        cellsOf(recipeCells.items),
        cellsOf(recipeCells.grams(row)),
        cellsOf(recipeCells.ownIngredients),
      ) as [[unknown]];
      const shown = await valueAt(
        page,
        recipeCells.sheet,
        `${recipeCells.columns.freezingPoint}${row}`,
      );
      expect([name, typeof expected, typeof shown]).toEqual([name, "number", "number"]);
      expect(Math.abs(Number(shown) / Number(expected) - 1)).toBeLessThan(1e-11);
    }
  });

  test("the pane's frame runs over the bench's host", async () => {
    const { page } = bench;
    const frame = page.frames().find((each) => each.url().endsWith("/pane.html"))!;
    const read = await frame.evaluate(() =>
      Excel.run(async (context) => {
        const { worksheets } = context.workbook;
        worksheets.load("items/name");
        await context.sync();
        return worksheets.items.map(({ name }) => name);
      }),
    );
    expect(read).toEqual(expect.arrayContaining(["Recipes", "Costing", "Names"]));
    expect(await frame.locator("body").innerText()).not.toBe("");
  });

  test("a file that is no workbook is refused in one sentence, and the open book stays", async () => {
    const { page } = bench;
    const before = await page.textContent("#book-name");
    await page.setInputFiles("#open-file", {
      name: "prices.xlsx",
      mimeType: "",
      buffer: Buffer.from("Sugar;1.30"),
    });
    await page.waitForSelector("#notice:not([hidden])");
    expect(await page.textContent("#notice")).toMatch(/^prices\.xlsx was not opened\. .+\.$/);
    expect(await page.textContent("#book-name")).toBe(before);
    expect(await valueAt(page, "Typed", "A2")).toBe(74);
  });

  test("an own workbook is opened, and its formulas of ours are calculated", async () => {
    const { page } = bench;
    const bytes = await bookToXlsx({
      name: "x",
      names: [],
      sheets: [
        sheet(
          "Ices",
          [
            [{ value: "water" }, { value: "sucrose" }],
            [
              { value: 74 },
              { value: 26 },
              { value: null, formula: "RIME.FREEZINGPOINT(A1:B1,A2:B2)" },
            ],
          ],
          [],
        ),
      ],
    });
    await page.setInputFiles("#open-file", {
      name: "Summer ices.xlsx",
      mimeType: "",
      buffer: Buffer.from(bytes),
    });
    await page.waitForFunction(
      () => document.querySelector("#book-name")?.textContent === "Summer ices",
    );
    const value = await valueAt(page, "Ices", "C2");
    expect(Math.abs(Number(value) - CRC_SUCROSE_26_PERCENT_C)).toBeLessThan(0.03);
  });

  test("a saved copy is a new file with the cells as they are now", async () => {
    const { page } = bench;
    await clickCell(page, 1, 1);
    await page.keyboard.type("30");
    await page.keyboard.press("Enter");
    const value = await valueAt(page, "Ices", "C2");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#save-copy")]);
    expect(download.suggestedFilename()).toBe("Summer ices copy.xlsx");
    const saved = await readWorkbook(new Uint8Array(await readFile(await download.path())));
    if (isProblem(saved)) throw new Error(saved.message);
    const [ices] = saved.sheets;
    expect(ices!.cellAt(1, 1)).toEqual({ value: 30 });
    expect(ices!.cellAt(1, 2)).toMatchObject({ value, formula: "RIME.FREEZINGPOINT(A1:B1,A2:B2)" });
  });

  test("a workbook dropped on the page is opened", async () => {
    const { page } = bench;
    const bytes = await bookToXlsx({ ...demoBook, name: "x" });
    const dropped = await page.evaluateHandle((base64) => {
      const data = new DataTransfer();
      const content = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      data.items.add(new File([content], "Dropped.xlsx"));
      return data;
    }, Buffer.from(bytes).toString("base64"));
    await page.dispatchEvent("#grid", "drop", { dataTransfer: dropped });
    await page.waitForFunction(
      () => document.querySelector("#book-name")?.textContent === "Dropped",
    );
    expect(typeof (await valueAt(page, "Recipes", "B5"))).toBe("number");
  });

  describe("a CSV file", () => {
    const open = (text: string) =>
      bench.page.setInputFiles("#open-file", {
        name: "Winter.csv",
        mimeType: "text/csv",
        buffer: Buffer.from(text),
      });
    const isOpen = (name: string) =>
      bench.page.waitForFunction(
        (wanted) => document.querySelector("#book-name")?.textContent === wanted,
        name,
      );
    const button = (name: string) => bench.page.getByRole("button", { name, exact: true });

    test("that leaves the decimal mark open is asked about by keyboard, and left alone by Esc", async () => {
      const { page } = bench;
      const former = await page.textContent("#book-name");
      await open("water;1,234\nsucrose;400");
      await page.getByText('Winter.csv: "1,234" can mean').waitFor();
      await page.keyboard.press("Escape");
      await page.getByText("Winter.csv was not opened.").waitFor();
      expect(await page.textContent("#book-name")).toBe(former);
      await open("water;1,234\nsucrose;400");
      await button("Decimal comma").waitFor();
      await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
      await isOpen("Winter");
      expect(await valueAt(page, "Winter", "B1")).toBe(1234);
      await open("water;1,234\nsucrose;400");
      await button("Decimal comma").click();
      await page.getByText("the decimal mark is the comma").waitFor();
      expect(await valueAt(page, "Winter", "B1")).toBe(1.234);
    });

    test("is calculated with, and saved as a new workbook beside it", async () => {
      const { page } = bench;
      await open("water;sucrose\n74,0;26,0");
      await page.getByText("your file itself stays as it is").waitFor();
      await clickCell(page, 1, 3);
      await page.keyboard.type("=RIME.FREEZINGPOINT(A1:B1,A2:B2)");
      await page.keyboard.press("Enter");
      const value = await valueAt(page, "Winter", "D2");
      expect(Math.abs(Number(value) - CRC_SUCROSE_26_PERCENT_C)).toBeLessThan(0.03);
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        button("Save a copy").click(),
      ]);
      expect(download.suggestedFilename()).toBe("Winter copy.xlsx");
    });
  });

  test("the pane folds away and comes back", async () => {
    const { page } = bench;
    await page.click("#toggle-pane");
    expect(await page.isVisible("#pane")).toBe(false);
    await page.click("#toggle-pane");
    expect(await page.isVisible("#pane")).toBe(true);
  });

  test("nothing was asked of another host, and nothing was reported as an error", () => {
    expect(bench.foreign).toEqual([]);
    expect(bench.errors).toEqual([]);
  });
});
