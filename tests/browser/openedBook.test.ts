import { sheet } from "../../src/bench/demo/cells";
import { callFunction } from "../../src/worksheet/callFunction";
import { describeInBrowser } from "./chromium";
import { changedCells, openFile, openWalk, type Walk, testThatPageWasQuiet } from "./walk";

// The views whose own walks stay on the demo book, on a workbook that was opened; and the other way round.

const SHEET = "Sorbets";
const TARGET = "scooped at −13";
const book = [
  sheet(
    SHEET,
    [
      [{ value: "Ingredient" }, { value: "Amount (g)" }],
      [{ value: "water" }, { value: 800 }],
      [{ value: "sucrose" }, { value: 150 }],
      [{ value: "lemon juice" }, { value: 50 }],
    ],
    [],
  ),
];

describeInBrowser("an opened workbook by keyboard", () => {
  let walk: Walk;
  let before: Awaited<ReturnType<Walk["contents"]>>;
  beforeAll(async () => {
    walk = await openWalk();
    await openFile(walk.bench, "Market", book);
    before = await walk.contents(SHEET);
    await walk.bench.select(SHEET, "A2");
  }, 300_000);
  afterAll(() => walk.close());

  test("Steer finds a change that RIME.CHECK says meets the target, beside the old amounts", async () => {
    await walk.goToView("Steer");
    await walk.choose(walk.field("Meant to be"), TARGET);
    await walk.press("Find the smallest change");
    await walk.panel().locator(".steer-answer").first().waitFor();
    await walk.press("Put it beside the recipe…");
    await walk.says(`${SHEET}!C1:C4`);
    await walk.press("Write");
    await walk.says(/^Written into Sorbets!C1:C4/);
    const rows = await walk.contents(SHEET);
    const grams = rows.slice(1, 4).map((row) => [row[2]]);
    const items = rows.slice(1, 4).map((row) => [row[0]]);
    expect(callFunction("CHECK", items, grams, TARGET)).toEqual([[`meets ${TARGET}`]]);
    expect(changedCells(before, rows)).toEqual([]);
  });

  test("Aims keeps a target on a new sheet of it, and refuses a faulty one", async () => {
    await walk.goToView("Aims");
    await walk.press("Add a target…");
    await walk.keyboard.type("stall scoop");
    await walk.fill(walk.field(/^Served at/), "warm");
    await walk.press("Save");
    await walk.says(/not “warm”/);
    await walk.fill(walk.field(/^Served at/), "-11");
    await walk.fill(walk.field(/^Ice, at least/), "60");
    await walk.fill(walk.field(/^Ice, at most/), "75");
    await walk.press("Save");
    await walk.says("“stall scoop” is saved.");
    await walk.press("Keep in the workbook");
    await walk.says("Kept in Aims.");
    const kept = await walk.contents("Aims");
    expect(kept.some((row) => row.includes("stall scoop") && row.includes(-11))).toBe(true);
    expect(changedCells(before, await walk.contents(SHEET))).toEqual([]);
  });

  testThatPageWasQuiet(() => walk);
});

describeInBrowser("the demo book read through by keyboard", () => {
  let walk: Walk;
  beforeAll(async () => {
    walk = await openWalk();
    await walk.goToView("Read-through");
  }, 300_000);
  afterAll(() => walk.close());

  test("its one missed target is found, with what it does, and nothing is changed", async () => {
    const before = await walk.contents("Recipes");
    await walk.press("Read the workbook");
    await walk
      .panel()
      .getByRole("heading", { name: /finding/ })
      .waitFor();
    await walk.says(/90 % of the water is ice/);
    await walk.press("Go to Recipes!C17");
    const { sheet: shown } = await walk.bench.selected();
    expect(shown).toBe("Recipes");
    expect(await walk.contents("Recipes")).toEqual(before);
    expect(walk.bench.errors).toEqual([]);
  });
});
