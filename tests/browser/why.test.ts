import { formula, sheet } from "../../src/bench/demo/cells";
import { recipeCells } from "../../src/bench/demo/recipesSheet";
import { describeInBrowser } from "./chromium";
import { objectionsAtWidths, THEMES } from "./paneBench";
import { openWalk, type Walk, openGermanWalk, testThatPageWasQuiet } from "./walk";

const { sheet: RECIPES, firstRow, columns } = recipeCells;
const SHEET = "Kirscheis";

const german = [
  sheet(
    SHEET,
    [
      [{ value: "Zutat" }, { value: "Menge (g)" }],
      [{ value: "Wasser" }, { value: 500 }],
      [{ value: "Zucker" }, { value: 150.5 }],
      [{ value: "Zitronensaft" }, { value: 40 }],
      [],
      [{ value: "Gefrierpunkt (°C)" }, formula("RIME.FREEZINGPOINT(A2:A4,B2:B4)")],
      [{ value: "Eis bei -14" }, formula("ROUND(RIME.ICEFRACTION(A2:A4,B2:B4,-14),3)")],
      [{ value: "falsch" }, formula('RIME.FREEZINGPOINT({"Wasser";"Zuker"},{500;150})')],
    ],
    [],
  ),
];

describeInBrowser("why, by keyboard", () => {
  let walk: Walk;
  beforeAll(async () => {
    walk = await openWalk();
    await walk.bench.select(RECIPES, `${columns.freezingPoint}${firstRow}`);
    await walk.goToView("Why");
  }, 300_000);
  afterAll(() => walk.close());

  const answer = () => walk.panel().locator("p strong").first().innerText();

  test("a cell of ours is answered with its own number, and beside it the ideal law's", async () => {
    await walk.says("It answers");
    const inCell = Number(await walk.bench.valueAt(RECIPES, `${columns.freezingPoint}${firstRow}`));
    const shown = Number((await answer()).replace("−", "-").replace("°C", ""));
    expect(Math.abs(shown / inCell - 1)).toBeLessThan(1e-4);
    await walk.heard(/^It answers −/);
    await walk.says(/^By the classroom’s ideal law it would be −\d/);
  });

  test("what it was given, the method and the help page fold out and are reached", async () => {
    await walk.unfold("What it was given");
    await walk.says(/ownIngredients/);
    await walk.says(/Names!\$?A\$?4/);
    await walk.unfold("How it is computed");
    const link = walk.panel().getByRole("link", { name: "Its help page" });
    await walk.tabTo(link);
    const [page] = await Promise.all([
      walk.page.waitForEvent("popup"),
      walk.keyboard.press("Enter"),
    ]);
    await page.getByRole("heading", { name: "RIME.FREEZINGPOINT" }).waitFor();
    await page.close();
  });

  test("the board's lines have a number, and its last one is the answer", async () => {
    const lines = await walk
      .panel()
      .locator(".why-board > ol")
      .first()
      .locator("li")
      .allInnerTexts();
    expect(lines.length).toBeGreaterThan(8);
    for (const line of lines) expect(line).toMatch(/\d|no ice|does not/i);
    const shown = (await answer()).replace(/\s?°C/, "").slice(0, 5);
    expect(lines.some((line) => line.includes(shown))).toBe(true);
    expect(await walk.panel().locator(".why-sources li").count()).toBeGreaterThan(1);
  });

  test("of two calls in a formula one is chosen, and one that declines says why", async () => {
    const filled = '=RIME.MOLES("sucrose",100)+RIME.MOLES("sucros",5)';
    await walk.bench.write(RECIPES, "Z3", filled);
    await walk.bench.select(RECIPES, "Z3");
    await walk.says(`${RECIPES}!Z3`);
    await walk.says(/0\.29/);
    await walk.goToView("Why");
    await walk.choose(walk.field("Which call"), 'RIME.MOLES("sucros",5)');
    await walk.heard(/"sucros".*nearest.*"sucrose"/);
    await walk.says("It declines, since:");
  });

  test("a cell of none of our functions says so; a block is told by its size", async () => {
    await walk.bench.select(RECIPES, `A${firstRow}`);
    await walk.says(/holds none of our functions/);
    await walk.bench.write(RECIPES, "AC3", '=RIME.SOLUTES("lactose")');
    await walk.bench.select(RECIPES, "AC3");
    await walk.says(/a block of \d+ × \d+ cells/);
  });

  test.each(THEMES)("nothing is objected to in %s, at 320 and 640 px", async (name, media) => {
    await walk.page.emulateMedia(media);
    await walk.bench.select(RECIPES, `${columns.freezingPoint}${firstRow}`);
    await walk.says("It answers");
    expect(await objectionsAtWidths(walk.bench, name, [640, 320])).toEqual([]);
  });

  testThatPageWasQuiet(() => walk);
});

describeInBrowser("warum, by keyboard, on an opened German workbook", () => {
  let walk: Walk;
  beforeAll(async () => {
    walk = await openGermanWalk(german, "B6", "Warum");
  }, 300_000);
  afterAll(() => walk.close());

  test("the answer is in the language's own notation, and is the cell's", async () => {
    const shown = walk.panel().locator("p strong").first();
    await shown.waitFor();
    const text = await shown.innerText();
    expect(text).toMatch(/^−\d,\d+\s°C$/);
    const inCell = Number(await walk.bench.valueAt(SHEET, "B6"));
    const number = Number(text.replace("−", "-").replace(",", ".").replace("°C", ""));
    expect(Math.abs(number / inCell - 1)).toBeLessThan(1e-4);
  });

  test("a call inside a rounding is explained as it stands", async () => {
    await walk.bench.select(SHEET, "B7");
    await walk.says(`${SHEET}!B7`);
    await walk.says(/ICEFRACTION/);
    await walk.panel().locator(".why-board li").first().waitFor();
  });

  test("what declines says so in German, with the nearest name", async () => {
    await walk.bench.select(SHEET, "B8");
    await walk.heard(/„?Zuker.*Zucker/);
    expect(walk.bench.errors).toEqual([]);
  });
});
