import { readFile } from "node:fs/promises";
import { sheet } from "../../src/bench/demo/cells";
import { recipeCells } from "../../src/bench/demo/recipesSheet";
import { describeInBrowser } from "./chromium";
import { objectionsAtWidths, THEMES } from "./paneBench";
import { changedCells, openWalk, type Walk, openGermanWalk, testThatPageWasQuiet } from "./walk";

const { sheet: RECIPES, firstRow } = recipeCells;
const PICTURES = [
  "Share of ice as it cools",
  "Ice, solution and glass",
  "What keeps the water liquid",
  "What moves the answer most",
];
const SHEET = "Kirscheis";
const PNG_SIGNATURE = "89504e470d0a1a0a"; // of every PNG file (ISO/IEC 15948, 5.2)

const german = [
  sheet(
    SHEET,
    [
      [{ value: "Zutat" }, { value: "Menge (g)" }],
      [{ value: "Wasser" }, { value: 500 }],
      [{ value: "Zucker" }, { value: 150.5 }],
      [{ value: "Fruktose" }, { value: 62.5 }],
    ],
    [],
  ),
];

describeInBrowser("curves by keyboard", () => {
  let walk: Walk;
  beforeAll(async () => {
    walk = await openWalk();
    await walk.bench.select(RECIPES, `A${firstRow}`);
    await walk.goToView("Curves");
  }, 300_000);
  afterAll(() => walk.close());

  const picture = () => walk.panel().locator("figure svg").first();

  test.each(PICTURES)("“%s” has a picture with a name, a table and two files", async (name) => {
    await walk.choose(walk.field("Picture"), name);
    await picture().waitFor();
    expect((await picture().getAttribute("aria-label"))?.length).toBeGreaterThan(20);
    await walk.unfold("The picture as a table");
    const cells = await walk.panel().locator("figure table td").allInnerTexts();
    expect(cells.filter((text) => /\d/.test(text)).length).toBeGreaterThan(3);

    const svg = await walk.download("Save as SVG");
    expect(svg.name).toMatch(/\.svg$/);
    const text = await readFile(svg.path, "utf8");
    expect(text).toMatch(/^<svg[^>]* xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(text).not.toMatch(/NaN|undefined|var\(--/);
    const png = await walk.download("Save as PNG");
    expect((await readFile(png.path)).subarray(0, 8).toString("hex")).toBe(PNG_SIGNATURE);
    await walk.heard(/\.png was saved\.$/);
    for (const media of THEMES) {
      await walk.page.emulateMedia(media[1]);
      expect(await objectionsAtWidths(walk.bench, `${name}, ${media[0]}`, [640, 320])).toEqual([]);
    }
    await walk.page.emulateMedia(THEMES[0][1]);
  });

  test("a picture in the sheet is offered, and where there is none it is said", async () => {
    await walk.press("Put beside the selection");
    await walk.heard(/^(The picture was put beside|This spreadsheet takes no pictures)/);
  });

  test("two recipes stand side by side, and the table has both", async () => {
    const before = await walk.contents(RECIPES);
    await walk.choose(walk.field("Picture"), PICTURES[0]!);
    await walk.press(/^Set “Apricot-pistachio sorbet bars” beside/);
    await walk.bench.select(RECIPES, `A${firstRow + 1}`);
    await walk.says(/^Beside it, dashed: Apricot-pistachio sorbet bars/);
    await walk.panel().locator('figure svg[aria-label*="The dashed curve is “Apricot"]').waitFor();
    const head = await walk.panel().locator("figure th[scope=col]").allTextContents();
    expect(head.join()).toContain("Apricot-pistachio sorbet bars");
    await walk.goToView("Curves");
    await walk.press("Take it away");
    expect(await walk.panel().locator("figure th[scope=col]").allTextContents()).toHaveLength(
      head.length - 1,
    );
    expect(changedCells(before, await walk.contents(RECIPES))).toEqual([]);
  });

  test("another serving temperature moves the mark", async () => {
    const label = () => picture().getAttribute("aria-label");
    const first = await label();
    await walk.fill(walk.field(/Served at/), "-9");
    await walk.panel().locator('figure svg[aria-label*="−9"]').waitFor();
    expect(await label()).not.toBe(first);
  });

  testThatPageWasQuiet(() => walk);
});

describeInBrowser("Bilder, by keyboard, on an opened German workbook", () => {
  let walk: Walk;
  beforeAll(async () => {
    walk = await openGermanWalk(german, "A2", "Bilder");
  }, 300_000);
  afterAll(() => walk.close());

  test("figures have a decimal comma, and nothing is left in English", async () => {
    const picture = walk.panel().locator("figure svg").first();
    await picture.waitFor();
    expect(await picture.getAttribute("aria-label")).toMatch(/Eis|Wasser/);
    await walk.unfold("Das Bild als Tabelle");
    const table = (await walk.panel().locator("figure table").innerText()).replace(/\s+/g, " ");
    expect(table).toMatch(/\d,\d/);
    expect(table).not.toMatch(/\d\.\d/);
    expect(table).not.toMatch(/water|ice\b|served|stored/i);
    expect(await objectionsAtWidths(walk.bench, "Bilder", [640, 320])).toEqual([]);
    expect(walk.bench.errors).toEqual([]);
  });
});
