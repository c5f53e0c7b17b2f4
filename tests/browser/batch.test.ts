import { readFile } from "node:fs/promises";
import { recipeCells } from "../../src/bench/demo/recipesSheet";
import { sheet } from "../../src/bench/demo/cells";
import { callFunction } from "../../src/worksheet/callFunction";
import { describeInBrowser } from "./chromium";
import { objectionsAtWidths } from "./paneBench";
import {
  changedCells,
  holds,
  openWalk,
  type Walk,
  openGermanWalk,
  testThatPageWasQuiet,
} from "./walk";

const { sheet: RECIPES, firstRow } = recipeCells;
const BARS = "Apricot-pistachio sorbet bars";
const BARS_GRAMS = 940; // 600 + 150 + 40 + 60 + 30 + 60, as the demo's kitchen has it

describeInBrowser("a batch of the demo book by keyboard", () => {
  let walk: Walk;
  let before: readonly (readonly unknown[])[];
  beforeAll(async () => {
    walk = await openWalk();
    await walk.bench.select(RECIPES, `A${firstRow}`);
    before = await walk.contents(RECIPES);
    await walk.goToView("Batch");
    await walk.panel().getByRole("heading", { name: BARS, exact: true }).waitFor();
  }, 300_000);
  afterAll(() => walk.close());

  test("it is scaled to pieces, and written into empty cells only", async () => {
    await walk.unfold("Size");
    await walk.choose(walk.field("Make it"), "so many pieces by weight");
    await walk.fill(walk.box(/^Pieces/), "24");
    await walk.fill(walk.box(/^Each/), "47");
    await walk.says(`${24 * 47} g in all, 1.2 times the recipe.`);
    await walk.press("Put the scaled recipe in the sheet");
    await walk.says(`${RECIPES}!A5:B11`);
    await walk.press("Write");
    await walk.bench.select(RECIPES, "Z24");
    await walk.says(`${RECIPES}!Z24:AA30`);
    await walk.press("Write");
    await walk.heard(`Written into ${RECIPES}!Z24:AA30.`);
    await walk.keyboard.press("Escape");
    expect(await walk.isFocused(walk.button("Put the scaled recipe in the sheet"))).toBe(true);
    const written = (await walk.contents(RECIPES)).slice(23, 30).map((row) => row.slice(25, 27));
    expect(written[0]).toEqual(["Ingredient", "g"]);
    const sum = written.slice(1).reduce((total, [, grams]) => total + Number(grams), 0);
    expect(sum).toBeCloseTo(BARS_GRAMS * 1.2, 6);
    expect(changedCells(before, await walk.contents(RECIPES))).toEqual([]);
    await walk.undoInSheet();
    await holds(walk.bench, RECIPES, "Z24", null);
    // Back in the sheet no recipe is selected: the view lets go of it before it is read again.
    const heading = walk.panel().getByRole("heading", { name: BARS, exact: true });
    await heading.waitFor({ state: "detached" });
    await walk.bench.select(RECIPES, `A${firstRow}`);
    await heading.waitFor();
    await walk.goToView("Batch");
  });

  test("moulds are filled by volume", async () => {
    await walk.unfold("Size");
    await walk.choose(walk.field("Make it"), "so many moulds by volume");
    await walk.fill(walk.box(/^Each mould holds/), "70");
    await walk.says(/^Moulds are filled to/);
    await walk.says(/^\d+ g in all/);
    await walk.unfold("Size");
  });

  test("the hours to freeze follow thickness and air", async () => {
    await walk.unfold("Hours to freeze");
    const hours = async () =>
      Number(/About ([\d.]+) h/.exec(await walk.panel().innerText())?.[1] ?? Number.NaN);
    const slab = await hours();
    await walk.fill(walk.box(/^Thickness/), "20");
    await walk.says(/^About/);
    const thin = await hours();
    await walk.choose(walk.field("The cold comes by"), "a fan");
    await walk.choose(walk.field("Shape"), "cylinder");
    const blown = await hours();
    expect(thin).toBeLessThan(slab / 2); // Plank: in still air half the thickness takes at most half the time
    expect(blown).toBeLessThan(thin);
    await walk.unfold("Hours to freeze");
  });

  test("the cost is that of the sheet's own column", async () => {
    await walk.unfold("Cost");
    const inSheet = Number(
      await walk.bench.valueAt(RECIPES, `${recipeCells.columns.cost}${firstRow}`),
    );
    await walk.says(`${inSheet.toFixed(2)} for the batch`);
    await walk.unfold("Cost");
  });

  test("a slip while weighing is answered by what to add", async () => {
    await walk.unfold("What is in the bowl");
    await walk.fill(walk.box(/^Sugar/), "180");
    await walk.says(/the batch is then 1.2 times the recipe/);
    await walk.says("8.0 g Dextrose"); // a fifth of 40 g
    await walk.says(/^Or one of these alone/);
    await walk.unfold("What is in the bowl");
  });

  test("another version stands beside it with the differences", async () => {
    await walk.unfold("Beside another version");
    await walk.press(`Keep “${BARS}” as the other version`);
    await walk.says("Now select the other recipe on the sheet.");
    await walk.bench.select(RECIPES, `A${firstRow + 7}`);
    const point = (row: number) => walk.bench.valueAt(RECIPES, `B${row}`).then(Number);
    const gap = (await point(firstRow + 7)) - (await point(firstRow));
    const line = walk.panel().getByRole("row", { name: /^First ice/ });
    await line.waitFor();
    expect(await line.innerText()).toContain(gap.toFixed(2).replace("-", "−"));
    await walk.press("Let go of it");
    await walk.unfold("Beside another version");
    await walk.bench.select(RECIPES, `A${firstRow}`);
    await walk.panel().getByRole("heading", { name: BARS, exact: true }).waitFor();
  });

  test("the label is copied with its allergens stressed", async () => {
    await walk.page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    await walk.unfold("Label text");
    await walk.press("Copy");
    await walk.heard("The label text was copied.");
    const copied = await walk.pane.evaluate(() => navigator.clipboard.readText());
    expect(copied).toMatch(/^Ingredients: Apricot, Sugar, .*Pistachios \(TREE NUTS\)/);
    await walk.unfold("Label text");
  });

  test("the card is a page to print, and a new sheet", async () => {
    await walk.unfold("Card");
    const { name, path } = await walk.download("Save as a page to print");
    expect(name).toBe(`${BARS}.html`);
    await walk.heard(`${name} was saved; open it and print it.`);
    const card = await readFile(path, "utf8");
    for (const part of ["600", "First ice", "Freezing does not kill germs", "tree nuts", "cup"])
      expect(card).toContain(part);
    const page = await walk.page.context().browser()!.newPage();
    await page.setContent(card);
    expect(await page.getByRole("heading", { level: 1 }).innerText()).toBe(BARS);
    await page.close();
    await walk.press("Put on a new sheet");
    await walk.heard(/^The card is on the sheet/);
    const sheetName = /“(.*)”/.exec(
      await walk
        .panel()
        .getByText(/^The card is on the sheet/)
        .innerText(),
    )![1]!;
    expect(await walk.bench.valueAt(sheetName, "A1")).toBe(BARS);
    expect(await walk.bench.valueAt(sheetName, "B5")).toEqual(expect.any(Number));
    expect(changedCells(before, await walk.contents(RECIPES))).toEqual([]);
    await walk.unfold("Card");
  });

  testThatPageWasQuiet(() => walk);
});

/** A German recipe with prices of a kilogram, and one that uses it as a base. */
const german = [
  sheet(
    "Eise",
    [
      [{ value: "Grundmix" }],
      [{ value: "Zutat" }, { value: "Menge (g)" }, { value: "Preis je kg" }],
      [{ value: "Vollmilch" }, { value: 700 }, { value: 1.1 }],
      [{ value: "Zucker" }, { value: 150 }, { value: 1.4 }],
      [],
      [{ value: "Honigeis" }],
      [{ value: "Zutat" }, { value: "Menge (g)" }],
      [{ value: "Grundmix" }, { value: 425 }],
      [{ value: "Honig" }, { value: 40 }],
    ],
    [],
  ),
];

describeInBrowser("ein Ansatz, by keyboard, on an opened German workbook", () => {
  let walk: Walk;
  beforeAll(async () => {
    walk = await openGermanWalk(german, "A3", "Ansatz");
  }, 300_000);
  afterAll(() => walk.close());

  test("numbers are typed and shown with a comma, and the cost is the sum of the prices", async () => {
    await walk.panel().getByRole("heading", { name: "Grundmix" }).waitFor();
    await walk.unfold("Größe");
    await walk.fill(walk.box(/^Insgesamt/), "425,5");
    await walk.says(/^426 g insgesamt, 0,500588-mal das Rezept/);
    await walk.unfold("Kosten");
    await walk.says(/^0,98 für den Ansatz, 0,12 je 100 g/); // 0.7 × 1.1 + 0.15 × 1.4
  });

  test("a base is kept, written out in the recipe that uses it, and made an own ingredient", async () => {
    await walk.unfold("Grundmischung darin");
    await walk.press("„Grundmix“ als Grundmischung behalten");
    await walk.bench.select("Eise", "A8");
    await walk.press("Das Rezept mit ausgeschriebener Grundmischung ins Blatt setzen");
    await walk.bench.select("Eise", "E7");
    await walk.says("Eise!E7:F10");
    await walk.press("Schreiben");
    await walk.heard("In Eise!E7:F10 geschrieben.");
    const written = (await walk.contents("Eise")).slice(6, 10).map((row) => row.slice(4, 6));
    expect(written).toEqual([
      ["Zutat", "g"],
      ["Vollmilch", 350],
      ["Zucker", 75],
      ["Honig", 40],
    ]);
    const whole = callFunction(
      "FREEZINGPOINT",
      [["whole milk"], ["sucrose"], ["honey, average"]],
      [[350], [75], [40]],
    )[0]?.[0];
    await walk.bench.write("Eise", "H7", "=RIME.FREEZINGPOINT(E8:E10,F8:F10)");
    expect(await walk.bench.valueAt("Eise", "H7")).toBeCloseTo(Number(whole), 9);
  });

  test("nothing is objected to, with all parts open", async () => {
    await walk.pane.evaluate(() => {
      for (const part of document.querySelectorAll("details")) part.open = true;
    });
    expect(await objectionsAtWidths(walk.bench, "Ansatz", [320])).toEqual([]);
    expect(walk.bench.errors).toEqual([]);
  });
});
