import { sheet } from "../../src/bench/demo/cells";
import { recipeCells } from "../../src/bench/demo/recipesSheet";
import { describeInBrowser } from "./chromium";
import { objectionsAtWidths, THEMES } from "./paneBench";
import {
  changedCells,
  holds,
  openWalk,
  type Walk,
  openGermanWalk,
  testThatPageWasQuiet,
} from "./walk";

const { sheet: RECIPES, firstRow, columns } = recipeCells;
const SHEET = "Erdbeereis";

const german = [
  sheet(
    SHEET,
    [
      [{ value: "Zutat" }, { value: "Menge (g)" }],
      [{ value: "Wasser" }, { value: 150 }],
      [{ value: "Zucker" }, { value: 50.5 }],
      [{ value: "Erdbeeren" }, { value: 100 }],
    ],
    [],
  ),
];

describeInBrowser("the notebook by keyboard", () => {
  let walk: Walk;
  let before: Awaited<ReturnType<Walk["contents"]>>;
  beforeAll(async () => {
    walk = await openWalk();
    before = await walk.contents(RECIPES);
    await walk.bench.select(RECIPES, `A${firstRow}`);
    await walk.goToView("Notebook");
  }, 300_000);
  afterAll(() => walk.close());

  const note = (text: string) => walk.fill(walk.box("Note"), text);
  const forecast = async () =>
    Number(await walk.bench.valueAt(RECIPES, `${columns.freezingPoint}${firstRow}`));

  test("nothing is written while nothing was measured, and a number that cannot be is refused", async () => {
    await walk.says(/The forecast for first ice: −\d+\.\d+\s±\s\d+\.\d+\s°C\./);
    await walk.press("Write it down");
    await walk.says("Enter at least one measurement or a note.");
    await walk.fill(walk.field(/^First ice, measured/), "cold");
    await note("windy");
    await walk.press("Write it down");
    await walk.says("It must be a number from −60 to 40 °C, not “cold”.");
    expect(await walk.isFocused(walk.field(/^First ice, measured/))).toBe(true);
    await walk.says(/the first line starts a new sheet, “Notebook”/);
  });

  test("the first line starts a sheet with the forecast beside the measurement", async () => {
    await walk.fill(walk.field(/^First ice, measured/), String((await forecast()) - 0.2));
    await walk.fill(walk.field(/^Brix of the mix/), "24.5");
    await walk.fill(walk.field(/^Freezer, measured/), "-16");
    await walk.choose(walk.field("How it gave way"), "scoops");
    await walk.press("Write it down");
    await walk.heard(/^Written to Notebook\./);
    await walk.says("1 line on the sheet “Notebook”");
    const rows = await walk.contents("Notebook");
    expect(rows[0]).toContain("first ice forecast, °C");
    const at = rows[0]!.indexOf("first ice forecast, °C");
    expect(Number(rows[1]![at])).toBeCloseTo(await forecast(), 9);
    expect(rows[1]).toEqual(expect.arrayContaining([24.5, -16, "scoops", "windy"]));
    expect(changedCells(before, await walk.contents(RECIPES))).toEqual([]);
  });

  test("a second line goes below; the plot and its table show both differences", async () => {
    await walk.fill(walk.field(/^First ice, measured/), String((await forecast()) + 0.1));
    await walk.press("Write it down");
    await walk.says("2 lines on the sheet “Notebook”");
    await walk.unfold("The picture as a table");
    for (const difference of ["−0.20", "0.10"]) {
      await walk.panel().getByRole("cell", { name: difference, exact: true }).waitFor();
    }
    const { name } = await walk.download("Save as SVG");
    expect(name).toMatch(/\.svg$/);
    await walk.says(/This freezer is 2\.0 K warmer than it is set to/);
  });

  test("one ingredient is learnt from a line, and only written when asked", async () => {
    await walk.choose(walk.field("Ingredient").first(), "Apricot");
    await walk.says(/what is dissolved in Apricot counts \d/);
    await walk.press("Put the corrected ingredient on a new sheet of own ingredients");
    await walk.says(/^The sheet “Own ingredients” holds the corrected ingredient/);
    const own = await walk.contents("Own ingredients");
    expect(own[0]).toContain("name");
    expect(own.some((row) => row.includes("Apricot"))).toBe(true);
  });

  test("a fruit is corrected by its Brix", async () => {
    await walk.unfold("A fruit or syrup by its measured Brix");
    await walk.choose(walk.field("Ingredient").last(), "Apricot");
    await walk.fill(walk.field(/^Refractometer reads/), "14");
    await walk.says(/What is dissolved in Apricot counts \d\.\d+ times/);
  });

  test.each(THEMES)("nothing is objected to in %s, at 320 and 640 px", async (name, media) => {
    await walk.page.emulateMedia(media);
    expect(await objectionsAtWidths(walk.bench, name, [640, 320])).toEqual([]);
  });

  testThatPageWasQuiet(() => walk);
});

describeInBrowser("das Heft, by keyboard, on an opened German workbook", () => {
  let walk: Walk;
  beforeAll(async () => {
    walk = await openGermanWalk(german, "A2", "Heft");
  }, 300_000);
  afterAll(() => walk.close());

  test("a line with decimal commas starts the sheet, and can be taken back", async () => {
    await walk.fill(walk.field(/^Erstes Eis, gemessen/), "−2,15");
    await walk.fill(walk.field(/^Brix der Mischung/), "21,5");
    await walk.press("Aufschreiben");
    await walk.says("1 Zeile auf dem Blatt „Heft“");
    const [headers, line] = await walk.contents("Heft");
    expect(headers).toContain("Brix gemessen");
    expect(line).toEqual(expect.arrayContaining([-2.15, 21.5]));
    await holds(walk.bench, SHEET, "B3", 50.5);
    expect(walk.bench.errors).toEqual([]);
  });
});
