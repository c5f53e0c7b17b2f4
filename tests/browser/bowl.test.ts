import { recipeCells } from "../../src/bench/demo/recipesSheet";
import { sheet } from "../../src/bench/demo/cells";
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
const SHEET = "Kirscheis";

/** A German recipe: one amount typed as a text with a decimal comma, two columns of amounts beside it. */
const german = [
  sheet(
    SHEET,
    [
      [{ value: "Zutat" }, { value: "Menge (g)" }],
      [{ value: "Wasser" }, { value: 500 }],
      [{ value: "Zucker" }, { value: 150.5 }],
      [{ value: "Fruktose" }, { value: "62,5" }],
      [{ value: "Zitronensaft" }, { value: 40 }],
    ],
    [],
  ),
  sheet(
    "Versuche",
    [
      [{ value: "Zutat" }, { value: "mild (g)" }, { value: "herb (g)" }],
      [{ value: "Wasser" }, { value: 500 }, { value: 500 }],
      [{ value: "Zucker" }, { value: 150 }, { value: 90 }],
    ],
    [],
  ),
];

describeInBrowser("the bowl by keyboard", () => {
  let walk: Walk;
  beforeAll(async () => {
    walk = await openWalk();
    await walk.bench.select(RECIPES, `A${firstRow}`);
    await walk.goToView("Bowl");
  }, 300_000);
  afterAll(() => walk.close());

  const headline = () => walk.panel().locator(".headline-value").innerText();

  test("every number of the demo recipe carries its uncertainty", async () => {
    await walk.says(/^First ice at/);
    expect(await headline()).toMatch(/^−\d+\.\d+\s±\s\d+\.\d+\s°C$/);
    const cells = await walk.panel().locator(".cold td, .sums dd").allInnerTexts();
    const filled = cells.filter((text) => text !== "");
    expect(filled).toHaveLength(9);
    for (const text of filled) expect(text).toMatch(/\d\s±\s\d/);
  });

  test("a target and a temperature are chosen, and the verdict is read out", async () => {
    await walk.choose(walk.field("Meant to be"), "scooped at −13");
    await walk.says(/^Asks for/);
    await walk.heard(/: First ice at −.*\s°C\. too soft: .* at −13 °C/);
    await walk.fill(walk.field(/Served at/), "−11,5");
    await walk
      .panel()
      .getByRole("columnheader", { name: /−11.5 °C/ })
      .waitFor();
    await walk.fill(walk.field(/Served at/), "warm");
    await walk.says("The serving temperature must be a number from −60 to 40 °C, not “warm”.");
    await walk.fill(walk.field(/Served at/), "−13");
  });

  test("a formula goes into the selected cell; Esc leads back; a filled cell needs a second key", async () => {
    const before = await walk.contents(RECIPES);
    await walk.press("Put a formula in the sheet…");
    const offer = walk.panel().getByRole("radio", { name: "First ice" });
    expect(await walk.isFocused(offer)).toBe(true);
    await walk.keyboard.press("Escape");
    await offer.waitFor({ state: "detached" });
    expect(await walk.isFocused(walk.button("Put a formula in the sheet…"))).toBe(true);

    await walk.keyboard.press("Enter");
    await walk.bench.select(RECIPES, "Z5");
    await walk.says(`${RECIPES}!Z5`);
    await walk.keyboard.press("ArrowDown"); // from the first offer to the second
    await walk.says(/ICEFRACTION/);
    await walk.press("Write");
    await walk.heard(`Written into ${RECIPES}!Z5.`);
    expect(await walk.bench.formulaAt(RECIPES, "Z5")).toMatch(/^=RIME\.ICEFRACTION\(.*-13,"water"/);
    const share = await walk.panel().locator(".cold td").nth(1).innerText();
    const inCell = Number(await walk.bench.valueAt(RECIPES, "Z5"));
    expect(Math.abs(inCell * 100 - Number.parseFloat(share))).toBeLessThan(0.051);

    await walk.bench.select(RECIPES, "A5");
    await walk.says(`${RECIPES}!A5`);
    await walk.press("Write");
    await walk.heard(`${RECIPES}!A5 is not empty; nothing was written yet.`);
    await walk.keyboard.press("Escape");
    expect(changedCells(before, await walk.contents(RECIPES))).toEqual([]);
  });

  test("what was written is one step to undo", async () => {
    await walk.undoInSheet();
    await holds(walk.bench, RECIPES, "Z5", null);
  });

  test("a kept recipe stays while the selection moves, and is let go again", async () => {
    await walk.bench.select(RECIPES, `A${firstRow}`);
    await walk.goToView("Bowl");
    const heading = (name: string) => walk.panel().getByRole("heading", { name, exact: true });
    await heading("Apricot-pistachio sorbet bars").waitFor();
    await walk.press("Keep", "Space");
    await walk.bench.select(RECIPES, `A${firstRow + 1}`);
    await walk.page.waitForTimeout(400);
    await heading("Apricot-pistachio sorbet bars").waitFor();
    await walk.press("Keep", "Space");
    await heading("Lemon granita").waitFor();
    await walk.heard(/^Lemon granita: First ice at/);
  });

  test("every part folds out: what was taken, the curve's table, the cautions, the sources", async () => {
    for (const part of ["ingredients: names", "The curve as a table"]) await walk.unfold(part);
    await walk.says("Own ingredients");
    await walk.panel().getByRole("cell", { name: /%/ }).first().waitFor();
    await walk.unfold("What holds for anything frozen");
    await walk.says(/^Freezing kills neither/);
    await walk.unfold("Where these numbers come from");
    await walk.says(/two cases in three/);
    await walk.bench.select(RECIPES, `A${firstRow + 5}`);
    await walk.heard(/^Cream ice with biscuit: First ice at/);
    await walk.choose(walk.field("Own ingredients"), "none");
    await walk.heard(/^Cream ice with biscuit: .*"Milk" can mean several things/);
    await walk.choose(walk.field("Own ingredients"), "Names!A4:D19");
    await walk.heard(/^Cream ice with biscuit: First ice at/);
    await walk.press("Read again");
    await walk.says(/^First ice at/);
  });

  testThatPageWasQuiet(() => walk);
});

describeInBrowser("die Schüssel, by keyboard, on an opened German workbook", () => {
  let walk: Walk;
  beforeAll(async () => {
    walk = await openGermanWalk(german, "A2", "Schüssel");
  }, 300_000);
  afterAll(() => walk.close());

  test("an amount typed as a text is named, and the way leads to its cell", async () => {
    await walk.press("Neu lesen"); // the own ingredients of the book before are gone with it
    await walk.panel().getByText("gibt es nicht mehr").waitFor({ state: "detached" });
    await walk.press("B4 62,5");
    expect(await walk.bench.selected()).toEqual({ sheet: SHEET, row: 3, column: 1 });
    await walk.bench.write(SHEET, "B4", "=62.5");
    await walk.goToView("Schüssel");
    await walk.press("Neu lesen");
    await walk.says(/^Erstes Eis bei/);
    expect(await walk.panel().locator(".headline-value").innerText()).toMatch(
      /^−\d+,\d+\s±\s\d,\d/,
    );
    await walk.heard(/: Erstes Eis bei −\d+,\d+\s±\s\d+,\d+\s°C/);
  });

  test("two columns of amounts are asked about, answered and asked about again", async () => {
    await walk.bench.select("Versuche", "A2");
    await walk.says(/Mehrere Spalten von Versuche!A1:C3/);
    await walk.heard(/Mehrere Spalten von Versuche!A1:C3/);
    await walk.choose(walk.field("Mengen stehen in"), "C, herb (g)");
    await walk.press("So lesen");
    await walk.panel().getByRole("heading", { name: "herb", exact: true }).waitFor();
    await walk.goToView("Schüssel");
    await walk.unfold("Zutaten: Namen");
    await walk.press("Noch einmal fragen");
    await walk.button("So lesen").waitFor();
    await walk.goToView("Schüssel");
  });

  test("nothing is objected to, with all parts open", async () => {
    await walk.bench.select(SHEET, "A2");
    await walk.says(/^Erstes Eis bei/);
    await walk.pane.evaluate(() => {
      for (const part of document.querySelectorAll("details")) part.open = true;
    });
    expect(await objectionsAtWidths(walk.bench, "Schüssel", [320])).toEqual([]);
    expect(walk.bench.errors).toEqual([]);
  });
});
