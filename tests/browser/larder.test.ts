import { sheet } from "../../src/bench/demo/cells";
import { bookToXlsx } from "../../src/bench/xlsx/bookToXlsx";
import { describeInBrowser } from "./chromium";
import { objectionsAtWidths, openPaneBench, THEMES, type PaneBench } from "./paneBench";

const ICES = "Ices";
const OWN = "Our things";

/** A book of someone's own: a recipe with a free line, and own ingredients headed in German. */
const ownBook = () =>
  bookToXlsx({
    name: "x",
    names: [],
    sheets: [
      sheet(
        ICES,
        [
          [{ value: "Rhubarb ice" }],
          [{ value: "Ingredient" }, { value: "from" }, { value: "Grams" }],
          [{ value: "water" }, { value: "tap" }, { value: 400 }],
          [{ value: "sucrose" }, { value: "tin" }, { value: 120 }],
          [],
          [],
          [{ value: "First ice" }, { value: null, formula: "RIME.FREEZINGPOINT(A3:A5,C3:C5)" }],
        ],
        [],
      ),
      sheet(
        OWN,
        [
          [{ value: "Name" }, { value: "Wie" }, { value: "Wasser" }, { value: "Quelle" }],
          [{ value: "Milch" }, { value: "whole milk" }],
        ],
        [],
      ),
    ],
  });

const panelOf = ({ pane }: PaneBench) => pane.locator('[role="tabpanel"]:not([hidden])');

async function openLarder(bench: PaneBench): Promise<void> {
  bench.page.setDefaultTimeout(15_000);
  await bench.pane.getByRole("tab", { name: "Larder" }).click();
}

/** Finds an entry and opens it, by keyboard alone, from the search. */
async function openByKeyboard({ page, pane }: PaneBench, name: string): Promise<void> {
  await pane.getByRole("searchbox").focus();
  await page.keyboard.press("Control+a");
  await page.keyboard.type(name);
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
}

/** Waits until the grid holds it: what was written is calculated a moment later. */
async function holds(bench: PaneBench, name: string, address: string, wanted: unknown) {
  for (let turn = 0; turn < 50; turn += 1) {
    if ((await bench.valueAt(name, address)) === wanted) return;
    await bench.page.waitForTimeout(100);
  }
  expect(await bench.valueAt(name, address)).toEqual(wanted);
}

describeInBrowser("the larder beside the demo book", () => {
  let bench: PaneBench;
  beforeAll(async () => {
    bench = await openPaneBench();
    await openLarder(bench);
  }, 300_000);
  afterAll(() => bench.close());

  const panel = () => panelOf(bench);
  const BARS = "Apricot bars";

  test("two entries are compared by keyboard", async () => {
    const { page } = bench;
    await openByKeyboard(bench, "sucrose");
    await panel().getByRole("button", { name: "Compare with…" }).focus();
    await page.keyboard.press("Enter");
    await openByKeyboard(bench, "Traubenzucker, wasserfrei");
    await panel().getByRole("heading", { name: "sucrose and glucose" }).waitFor();
    const cells = panel().locator("tr", { hasText: "gram for gram" }).locator("td");
    // CRC Handbook, 102nd ed., 10 % by mass: glucose 1.17 K, sucrose 0.63 K
    const ratio = parseFloat((await cells.last().innerText()).split(" ")[0]!);
    expect(Math.abs(ratio - 1.17 / 0.63)).toBeLessThan(0.03);
    await page.keyboard.press("Escape");
    await panel().getByRole("searchbox").waitFor();
  });

  test("the freezing effect goes into a cell as a formula that gives it", async () => {
    await openByKeyboard(bench, "glucose");
    await bench.select(BARS, "J4");
    await panel()
      .getByRole("button", { name: /^Insert lowers.*gram for gram/ })
      .click();
    await panel().getByText(`${BARS}!J4`, { exact: true }).waitFor();
    await panel().getByRole("button", { name: "Write", exact: true }).click();
    await panel().getByText(`Written into ${BARS}!J4.`).waitFor();
    expect(await bench.formulaAt(BARS, "J4")).toMatch(/^=RIME\.DEPRESSION\(.*\/RIME\.DEPRESSION\(/);
    expect(Math.abs(Number(await bench.valueAt(BARS, "J4")) - 1.17 / 0.63)).toBeLessThan(0.03);
    await panel().getByRole("heading", { name: "glucose", exact: true }).click();
    await bench.page.keyboard.press("Escape");
  });

  test("an own ingredient goes beneath the kitchen's names, and a cell understands it", async () => {
    const { pane } = bench;
    await panel().getByRole("button", { name: "Own, from a label…" }).click();
    await pane.getByLabel("Name, as").fill("Orchard jam");
    await pane.getByLabel(/^Carbohydrate/).fill("62");
    await pane.getByLabel(/^of which sugars/).fill("60");
    await panel().getByText("Cells that would be written").waitFor();
    await panel().getByRole("rowheader", { name: "Names!A20" }).waitFor();
    await panel().getByRole("button", { name: "Write", exact: true }).click();
    await panel()
      .getByText(/The functions understand “Orchard jam” when they are given Names!A4:F20/)
      .waitFor();
    await holds(bench, "Names", "A20", "Orchard jam");
    await bench.write("Names", "J2", '=RIME.FREEZINGPOINT({"water";"Orchard jam"},{80;20},A4:F20)');
    // CRC Handbook, 102nd ed.: 12 % sucrose, −0.77 °C
    expect(Math.abs(Number(await bench.valueAt("Names", "J2")) + 0.77)).toBeLessThan(0.03);
    expect(Number(await bench.valueAt(BARS, "D13"))).toBeLessThan(0);
  });

  test("nothing was asked of any other host, and the page reported no error", () => {
    expect(bench.foreign).toEqual([]);
    expect(bench.errors).toEqual([]);
  });
});

describeInBrowser("the larder beside an opened workbook", () => {
  let bench: PaneBench;
  beforeAll(async () => {
    bench = await openPaneBench();
    const bytes = await ownBook();
    await bench.page.setInputFiles("#open-file", {
      name: "Rhubarb.xlsx",
      mimeType: "",
      buffer: Buffer.from(bytes),
    });
    await bench.page.waitForFunction(
      () => document.querySelector("#book-name")?.textContent === "Rhubarb",
    );
    await openLarder(bench);
  }, 300_000);
  afterAll(() => bench.close());

  const panel = () => panelOf(bench);

  test("a row goes into the recipe's columns and counts in its freezing point", async () => {
    const before = Number(await bench.valueAt(ICES, "B7"));
    await openByKeyboard(bench, "crystalline fructose");
    await bench.select(ICES, "B4");
    await panel().getByRole("button", { name: "Insert row…" }).focus();
    await bench.page.keyboard.press("Enter");
    await panel()
      .getByText(/Ices!A4, Ices!C4 is not empty/)
      .waitFor();
    await bench.select(ICES, "B5");
    await panel().getByRole("rowheader", { name: "Ices!A5" }).waitFor();
    await bench.pane.getByLabel(/^Amount/).focus();
    await bench.page.keyboard.type("35,5");
    await bench.page.keyboard.press("Tab");
    await bench.page.keyboard.press("Enter");
    await panel().getByText("Written and read again: Ices!A5, Ices!C5.").waitFor();
    await holds(bench, ICES, "A5", "crystalline fructose");
    await holds(bench, ICES, "C5", 35.5);
    expect(await bench.valueAt(ICES, "C4")).toBe(120);
    expect(Number(await bench.valueAt(ICES, "B7"))).toBeLessThan(before);
  });

  test("own ingredients headed in German take a label's row in their own columns", async () => {
    const { pane } = bench;
    await pane.getByRole("button", { name: /^← / }).click();
    await panel().getByRole("button", { name: "Own, from a label…" }).click();
    await pane.getByLabel("Name, as").fill("Rhubarb wine");
    await pane.getByLabel(/^Alcohol/).fill("12");
    await pane.getByLabel(/^of which sugars/).fill("4");
    await panel()
      .getByRole("rowheader", { name: `${OWN}!A3` })
      .waitFor();
    await panel().getByRole("button", { name: "Write", exact: true }).click();
    await panel()
      .getByText(/The functions understand “Rhubarb wine”/)
      .waitFor();
    // ABV × 0.78924 g/mL (OIML R 22): about 9.6 % by mass; the rest of 100 g is water and sugar
    expect(Math.abs(Number(await bench.valueAt(OWN, "C3")) - 86.4)).toBeLessThan(0.1);
  });

  test("or a sheet of their own, under a free name", async () => {
    const { pane } = bench;
    await pane.getByLabel("Name, as").fill("Old syrup");
    await pane.getByLabel("Write it to").selectOption("");
    await pane.getByLabel("Name of the new sheet").fill(ICES);
    await panel().getByRole("rowheader", { name: "Ices (2)!A1" }).waitFor();
    await panel().getByRole("button", { name: "Write", exact: true }).click();
    await panel()
      .getByText(/The functions understand “Old syrup” when they are given Ices \(2\)!A1/)
      .waitFor();
    await holds(bench, "Ices (2)", "A2", "Old syrup");
    expect(await bench.valueAt(ICES, "A1")).toBe("Rhubarb ice");
  });

  test.each(THEMES)(
    "nothing is objected to in %s, at 320, 350 and 640 px",
    async (theme, media) => {
      const { page, pane } = bench;
      await page.emulateMedia(media);
      const found: string[] = [];
      const look = async (name: string) => {
        found.push(...(await objectionsAtWidths(bench, `${theme}, ${name}`, [640, 350, 320])));
        const folder = process.env["SCREENSHOTS_TO"];
        if (folder === undefined) return;
        const height = await pane.evaluate(() => document.documentElement.scrollHeight);
        await page.setViewportSize({ width: 1440, height: Math.min(3600, height + 120) });
        await page.locator("#pane").screenshot({ path: `${folder}/larder ${name} ${theme}.png` });
        await page.setViewportSize({ width: 1440, height: 860 });
      };
      await pane.getByLabel(/read on the label/).check();
      await pane.getByLabel("Its sugars are").selectOption("each");
      await pane.getByText("What labels seldom print").click();
      await look("label");
      await pane.getByRole("button", { name: /^← / }).click();
      await openByKeyboard(bench, "honey, average");
      await pane.getByRole("button", { name: "Insert row…" }).click();
      await panel().getByRole("table").waitFor();
      await look("entry");
      await pane.getByRole("button", { name: "Compare with…" }).click();
      await look("choosing");
      await openByKeyboard(bench, "whole milk");
      await pane.getByText("Where the figures of whole milk come from").click();
      await look("compared");
      await pane.getByRole("button", { name: /^← / }).click();
      await look("search");
      await panel().getByRole("button", { name: "Own, from a label…" }).click();
      await pane.getByLabel(/^of which sugars/).fill("4");
      expect(found).toEqual([]);
    },
    90_000,
  );

  test("nothing was asked of any other host, and the page reported no error", () => {
    expect(bench.foreign).toEqual([]);
    expect(bench.errors).toEqual([]);
  });
});
