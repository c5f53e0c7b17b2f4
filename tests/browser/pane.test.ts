import { recipeCells } from "../../src/bench/demo/recipesSheet";
import { newSheet } from "./benchPage";
import { describeInBrowser } from "./chromium";
import { objectionsAtWidths, openPaneBench, THEMES, type PaneBench } from "./paneBench";

const { sheet, firstRow, lastRow, columns } = recipeCells;
const BARS = "Apricot bars";

describeInBrowser("the pane beside the demo book", () => {
  let bench: PaneBench;
  beforeAll(async () => {
    bench = await openPaneBench();
    bench.page.setDefaultTimeout(15_000);
  }, 300_000);
  afterAll(() => bench.close());

  const tab = (name: string) => bench.pane.getByRole("tab", { name }).click();
  const panel = () => bench.pane.locator('[role="tabpanel"]:not([hidden])');
  const selectionIs = (name: string, row: number, column: number) =>
    bench.page.waitForFunction(
      ([wanted, top, left]) => {
        const selection = window.rimelineBench!.grid.selection();
        const { range } = selection;
        return selection.sheet === wanted && range.top === top && range.left === left;
      },
      [name, row, column] as const,
    );
  const shownFreezingPoint = async () =>
    Number(await panel().locator("data.headline-value").getAttribute("value"));

  test("the bowl shows each recipe's freezing point exactly as its cell does", async () => {
    await tab("Bowl");
    for (let row = firstRow; row <= lastRow; row += 1) {
      await bench.select(sheet, `A${row}`);
      const name = String(await bench.valueAt(sheet, `A${row}`));
      await panel().getByRole("heading", { name, exact: true }).waitFor();
      const inCell = Number(await bench.valueAt(sheet, `${columns.freezingPoint}${row}`));
      expect(inCell).toBeLessThan(0);
      // The grid keeps 12 digits of a number.
      expect(Math.abs((await shownFreezingPoint()) / inCell - 1)).toBeLessThan(1e-11);
    }
  }, 60_000);

  test("the bowl follows a click on another cell", async () => {
    await bench.select(sheet, `A${firstRow}`);
    const name = String(await bench.valueAt(sheet, `A${firstRow}`));
    await panel().getByRole("heading", { name, exact: true }).waitFor();
    await bench.page.locator("canvas[id^=univer-sheet-main-canvas]").click();
    await panel().getByRole("heading", { name, exact: true }).waitFor({ state: "detached" });
  });

  test("the bowl checks against a target and takes another serving temperature", async () => {
    await bench.select(sheet, `A${firstRow}`);
    const target = String(await bench.valueAt(sheet, `C${firstRow}`));
    await panel().getByLabel("Meant to be").selectOption(target);
    const verdict = panel().locator(".target-check strong");
    await verdict.waitFor();
    expect(await verdict.innerText()).toBe(
      await bench.valueAt(sheet, `${columns.check}${firstRow}`),
    );
    await panel()
      .getByLabel(/Served at/)
      .fill("−9,5");
    await panel()
      .getByRole("columnheader", { name: /−9.5 °C/ })
      .waitFor();
  });

  test("the bowl reads a recipe in cups and spoons from its column of grams", async () => {
    await bench.select(BARS, "A6");
    await panel().getByText("names A5:A10, amounts D5:D10").waitFor();
    const inCell = Number(await bench.valueAt(BARS, "D13"));
    expect(await bench.valueAt(BARS, "A13")).toMatch(/Freezes from/);
    expect(Math.abs((await shownFreezingPoint()) / inCell - 1)).toBeLessThan(1e-11);
  });

  test("a misspelt name is answered by the function's sentence and the way to the cell", async () => {
    await newSheet(bench.page, "Typo", [
      ["Ingredient", "g"],
      ["water", 200],
      ["sucrsoe", 70],
      ["lemon juice", 30],
    ]);
    await bench.select("Typo", "B2");
    await panel()
      .locator(".notice-text", { hasText: /"sucrsoe".*nearest/ })
      .waitFor();
    await panel().getByRole("button", { name: "A3 sucrsoe" }).click();
    await selectionIs("Typo", 2, 0);
  });

  test("the read-through finds it and jumps to the cell, by keyboard", async () => {
    await bench.select(sheet, "A1");
    await tab("Read-through");
    await panel().getByRole("button", { name: "Read the workbook" }).focus();
    await bench.page.keyboard.press("Enter");
    const go = panel().getByRole("button", { name: "Go to Typo!A3" }).first();
    await go.waitFor({ timeout: 60_000 });
    await go.focus();
    await bench.page.keyboard.press("Enter");
    await selectionIs("Typo", 2, 0);
  }, 90_000);

  test("the larder finds by a German name and inserts a formula, by keyboard alone", async () => {
    const { keyboard } = bench.page;
    await bench.pane.getByRole("tab", { name: "Read-through" }).focus();
    for (const between of ["Why", "Notebook", "Larder"]) {
      await keyboard.press("ArrowLeft");
      await bench.pane.getByRole("tab", { name: between, selected: true }).waitFor();
    }
    await keyboard.press("Tab");
    await keyboard.type("Haushaltszucker");
    await panel().getByText("1 entry").waitFor();
    await keyboard.press("ArrowDown");
    await keyboard.press("Enter");
    await panel().getByRole("heading", { name: "sucrose", exact: true }).waitFor();
    await bench.select(BARS, "H4");
    await selectionIs(BARS, 3, 7);
    await panel().getByRole("button", { name: "Insert molar mass…" }).focus();
    await keyboard.press("Enter");
    await panel().getByText(`${BARS}!H4`, { exact: true }).waitFor();
    await keyboard.press("Tab"); // the choice between formula and value
    await keyboard.press("Tab");
    await keyboard.press("Enter");
    await panel().getByText(`Written into ${BARS}!H4.`).waitFor();
    // IUPAC standard atomic weights 2021, C12H22O11
    expect(Number(await bench.valueAt(BARS, "H4"))).toBeCloseTo(342.3, 1);
  });

  test("a filled cell is kept until the second button is pressed", async () => {
    await panel().getByLabel("Value").check();
    await panel().getByRole("button", { name: "Write" }).click();
    await panel()
      .getByText(/is not empty/)
      .waitFor();
    expect(await bench.formulaAt(BARS, "H4")).toMatch(/^=RIME\.SOLUTE/);
    await panel()
      .getByRole("button", { name: /^Replace what is in/ })
      .click();
    await panel().getByText(`Written into ${BARS}!H4.`).waitFor();
    expect(await bench.formulaAt(BARS, "H4")).toBe("");
    expect(Number(await bench.valueAt(BARS, "H4"))).toBeCloseTo(342.3, 1);
  });

  test("nothing was asked of any other host, and the page reported no error", () => {
    expect(bench.foreign).toEqual([]);
    expect(bench.errors).toEqual([]);
  });
});

describeInBrowser("the pane is accessible", () => {
  let bench: PaneBench;
  beforeAll(async () => {
    bench = await openPaneBench();
    bench.page.setDefaultTimeout(15_000);
    await bench.select(BARS, "A6");
  }, 300_000);
  afterAll(() => bench.close());

  const show = async (name: string) => {
    const { pane } = bench;
    await pane.getByRole("tab", { name }).click();
    if (name === "Bowl") await pane.locator(".headline").waitFor();
    if (name === "Batch") {
      await pane.getByText("Size", { exact: true }).waitFor();
      await pane.evaluate(() => {
        for (const part of document.querySelectorAll("details")) part.open = true;
      });
    }
    if (name === "Curves") await pane.locator(".picture svg").first().waitFor();
    if (name === "Notebook") await pane.getByRole("button", { name: "Write it down" }).waitFor();
    if (name === "Larder" && (await pane.getByRole("searchbox").isVisible())) {
      await pane.getByRole("searchbox").fill("honey, average");
      await pane.locator("button.hit").first().click();
      await pane.getByRole("button", { name: "Insert water…" }).click();
    }
    if (name === "Read-through") {
      await pane.getByRole("button", { name: /^Read (the workbook|it again)$/ }).click();
      await pane.getByRole("heading", { name: /finding|Nothing/ }).waitFor({ timeout: 60_000 });
    }
  };

  test.each(THEMES)(
    "in %s, at 320, 350 and 640 px",
    async (_, media) => {
      const { page } = bench;
      await page.emulateMedia(media);
      const found: string[] = [];
      for (const name of ["Bowl", "Batch", "Curves", "Larder", "Notebook", "Why", "Read-through"]) {
        await show(name);
        found.push(...(await objectionsAtWidths(bench, name)));
      }
      expect(found).toEqual([]);
    },
    180_000,
  );
});
