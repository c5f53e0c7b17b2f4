import { namesSheet, OWN_INGREDIENTS } from "../../src/bench/demo/namesSheet";
import { callFunction } from "../../src/worksheet/callFunction";
import { openBenchPage, valueAt, type BenchPage } from "./benchPage";
import { describeInBrowser } from "./chromium";

// A costing sheet gets batches beside its prices, and three columns of ours, all by keyboard from one click on.

const SHEET = "Costing";
const TARGET = "scooped at -13";
const HEADER = ["Batch", "Water", "Sugar", "Lemon juice", "Cost", "Freezes", "Ice at -12", "Check"];
const BATCHES = [
  ["plain", 600, 180, 90],
  ["sweet", 560, 260, 90],
  ["sharp", 560, 200, 180],
] as const;
const FIRST_CELL = { x: 46 + 150 + 90 + 130 + 120 + 88 + 40, y: 20 + 3 * 24 + 12 }; // F4, beside the prices

const names = [["Water", "Sugar", "Lemon juice"]];
const grams = BATCHES.map(([, ...amounts]) => amounts);
const own = namesSheet.rows
  .slice(3)
  .map((row) => Array.from({ length: 4 }, (_, column) => row[column]?.value ?? null));

describeInBrowser("A costing sheet typed as a user types", () => {
  let bench: BenchPage;
  beforeAll(async () => {
    bench = await openBenchPage();
    await bench.page.evaluate(() => window.rimelineBench!.grid.activate("Costing"));
    await bench.page.click("#toggle-pane");
    const box = await bench.page.locator("canvas[id^=univer-sheet-main-canvas]").boundingBox();
    await bench.page.mouse.click(box!.x + FIRST_CELL.x, box!.y + FIRST_CELL.y);
    await selected("F4");
  }, 180_000);
  afterAll(() => bench.close());

  const at = (address: string) => valueAt(bench.page, SHEET, address);
  const press = (key: string) => bench.page.keyboard.press(key);
  const type = (text: string) => bench.page.keyboard.type(text, { delay: 10 });
  const settled = () => bench.page.evaluate(() => window.rimelineBench!.grid.settled());

  /** Waits until a cell is the selected one. */
  async function selected(address: string): Promise<void> {
    const [column, row] = [address.charCodeAt(0) - 65, Number(address.slice(1)) - 1];
    await bench.page.waitForFunction(
      ([left, top]) => {
        const { range } = window.rimelineBench!.grid.selection();
        return range.top === top && range.left === left;
      },
      [column, row] as const,
    );
  }

  /** Goes to a cell by the arrow keys, one press a step. */
  async function goTo(address: string): Promise<void> {
    const here = await bench.page.evaluate(() => window.rimelineBench!.grid.selection().range);
    const across = address.charCodeAt(0) - 65 - here.left;
    const down = Number(address.slice(1)) - 1 - here.top;
    for (let step = 0; step < Math.abs(across); step += 1)
      await press(across > 0 ? "ArrowRight" : "ArrowLeft");
    for (let step = 0; step < Math.abs(down); step += 1)
      await press(down > 0 ? "ArrowDown" : "ArrowUp");
    await selected(address);
  }

  /** Types the beginning of a function's name and takes it from the list that comes up. */
  async function complete(beginning: string, wanted: string): Promise<void> {
    await type(`=${beginning}`);
    const offered = bench.page.locator("li", { hasText: /^RIME\./ });
    await offered.first().waitFor();
    const texts = await offered.allInnerTexts();
    const place = texts.findIndex((text) => text.startsWith(`RIME.${wanted}`));
    expect([texts, place >= 0]).toEqual([texts, true]);
    for (let step = 0; step < place; step += 1) await press("ArrowDown");
    await press("Tab");
    await bench.page.waitForFunction(
      (text) => document.body.innerText.includes(text),
      `RIME.${wanted}(`,
    );
  }

  test("batches are typed beside the prices, with a cost from them", async () => {
    for (const [row, line] of [HEADER, ...BATCHES].entries()) {
      for (const [place, value] of line.entries()) {
        await type(String(value));
        if (place < line.length - 1) await press("Tab");
      }
      await press("Enter");
      await selected(`F${5 + row}`);
    }
    for (const [row] of BATCHES.entries()) {
      await goTo(`J${5 + row}`);
      await type(`=(G${5 + row}*$D$5+H${5 + row}*$D$9+I${5 + row}*$D$14)/100`);
      await press("Enter");
    }
    await settled();
    // 600 g of water at 0.01, 180 g of sugar at 1.30 a kilogram, 90 g of lemon juice at 3.10 for 500 g
    expect(await at("J5")).toBeCloseTo(0.006 + 0.234 + 0.558, 12);
  });

  test.each([
    ["rime.free", "FREEZINGPOINT", "K5", `G4:I4,G5:I7,${OWN_INGREDIENTS})`, []],
    [
      "rime.ice",
      "ICEFRACTION",
      "L5",
      `G4:I4,G5:I7,-12,"water",${OWN_INGREDIENTS})`,
      [-12, "water"],
    ],
    ["rime.ch", "CHECK", "M5", `G4:I4,G5:I7,"${TARGET}",${OWN_INGREDIENTS})`, [TARGET]],
  ] as const)(
    "%s is completed to %s and fills its column from %s",
    async (beginning, name, cell, rest, between) => {
      await goTo(cell);
      await complete(beginning, name);
      await type(rest);
      await press("Enter");
      await settled();
      const expected = callFunction(name, names, grams, ...between, own);
      expect(expected).toHaveLength(3);
      for (const [row, [value]] of expected.entries()) {
        const found = await at(`${cell[0]!}${5 + row}`);
        if (typeof value === "number") expect(Number(found) / value).toBeCloseTo(1, 11);
        else expect(found).toBe(value);
      }
    },
  );

  test("a changed amount changes its row only", async () => {
    const [before, other] = [await at("K5"), await at("K6")];
    await goTo("H5");
    await type("220");
    await press("Enter");
    await settled();
    const [[expected]] = callFunction("FREEZINGPOINT", names, [[600, 220, 90]], own) as [[number]];
    expect(await at("K5")).toBeCloseTo(expected, 9);
    expect(expected).toBeLessThan(Number(before));
    expect(await at("K6")).toBe(other);
    expect(bench.errors).toEqual([]);
  });

  test("is drawn for the eye when asked", async () => {
    const folder = process.env["SCREENSHOTS_TO"];
    await goTo("M5");
    if (folder !== undefined) await bench.page.screenshot({ path: `${folder}/costing.png` });
  });
});
