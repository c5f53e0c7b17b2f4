import { recipes } from "../../src/bench/demo/kitchen";
import { recipeCells } from "../../src/bench/demo/recipesSheet";
import { newSheet } from "./benchPage";
import { describeInBrowser } from "./chromium";
import { objectionsAtWidths, openPaneBench, THEMES, type PaneBench } from "./paneBench";

const { sheet, firstRow, lastRow } = recipeCells;
const BARS = "Apricot bars";
const SORBET = recipes.findIndex(({ name }) => name === "Lemon sorbet");

describeInBrowser("steering a recipe of the demo book", () => {
  let bench: PaneBench;
  beforeAll(async () => {
    bench = await openPaneBench();
    bench.page.setDefaultTimeout(15_000);
    await bench.pane.getByRole("tab", { name: "Steer" }).click();
  }, 300_000);
  afterAll(() => bench.close());

  const panel = () => bench.pane.locator('[role="tabpanel"]:not([hidden])');
  const heading = (name: string) => panel().getByRole("heading", { name, exact: true }).waitFor();
  const find = () => panel().getByRole("button", { name: "Find the smallest change" }).click();
  const notice = () => panel().locator(".steer-answer .notice-text").innerText();
  const steerTo = async (target: string) => {
    await panel().getByLabel("Meant to be").selectOption(target);
    await find();
    await panel().locator(".steer-answer").waitFor();
  };
  /** Puts the answer beside the recipe; answers the address it was written to. */
  const place = async () => {
    await panel().getByRole("button", { name: "Put it beside the recipe…" }).click();
    await panel().getByRole("button", { name: "Write", exact: true }).click();
    const said = await panel()
      .getByText(/^Written into /)
      .innerText();
    return /!([A-Z]+)(\d+):([A-Z]+)(\d+);/.exec(said)!.slice(1);
  };
  /** What was written keeps its recipe in the pane; the next test looks at another. */
  beforeEach(async () => {
    const keep = panel().getByRole("button", { name: "Keep", exact: true, pressed: true });
    if ((await keep.count()) > 0) await keep.click();
  });

  test("a recipe that is a row gets a new row that RIME.CHECK says meets the target", async () => {
    const row = firstRow + SORBET;
    await bench.select(sheet, `A${row}`);
    await heading("Lemon sorbet");
    await steerTo("scooped at −18");
    expect(await notice()).toMatch(/^Every wish was asked again/);
    const before = await bench.valueAt(sheet, `G${row}`);
    const [from, top, , bottom] = await place();
    expect([from, Number(top) > lastRow]).toEqual(["A", true]);
    const items = `$G$4:$U$4`;
    const grams = `G${bottom}:U${bottom}`;
    await bench.write(
      sheet,
      `X${bottom}`,
      `=RIME.CHECK(${items},${grams},"scooped at −18",${recipeCells.ownIngredients})`,
    );
    expect(await bench.valueAt(sheet, `X${bottom}`)).toBe("meets scooped at −18");
    expect(await bench.valueAt(sheet, `A${bottom}`)).toBe("Lemon sorbet adjusted");
    expect(await bench.valueAt(sheet, `G${row}`)).toBe(before);
  });

  test("a recipe that is a column gets a new column beside its table", async () => {
    await bench.select(BARS, "A6");
    await panel()
      .locator("h2", { hasText: `${BARS}!` })
      .waitFor();
    await steerTo("firm bar at −18");
    const [left, , right] = await place();
    expect(left! > "D").toBe(true);
    await bench.write(
      BARS,
      "A40",
      `=RIME.CHECK($A$5:$A$10,${right}5:${right}10,"firm bar at −18",${recipeCells.ownIngredients})`,
    );
    expect(await bench.valueAt(BARS, "A40")).toBe("meets firm bar at −18");
  });

  test("a wish that cannot be met is answered by the one in the way", async () => {
    await bench.select(sheet, `A${firstRow + SORBET}`);
    await heading("Lemon sorbet");
    await panel().getByLabel("Add a wish…").selectOption("fat");
    await panel().getByLabel("Fat, g per 100 g: at least").fill("7,5");
    await find();
    expect(await notice()).toMatch(/“Fat” stands in the way: at least 7.5/);
  });

  test("all of it by keyboard", async () => {
    const { keyboard } = bench.page;
    await newSheet(bench.page, "Keys", [
      ["Ingredient", "g"],
      ["water", 800],
      ["sucrose", 150],
      ["lemon juice", 50],
    ]);
    await bench.select("Keys", "B2");
    await heading("Keys!A1:B4");
    await panel().getByLabel("Meant to be").focus();
    await keyboard.type("scooped at −13");
    const button = panel().getByRole("button", { name: "Find the smallest change" });
    for (let presses = 0; presses < 20; presses += 1) {
      await keyboard.press("Tab");
      if (await button.evaluate((each) => each === document.activeElement)) break;
    }
    await keyboard.press("Enter");
    await panel().locator(".steer-answer").waitFor();
    const open = panel().getByRole("button", { name: "Put it beside the recipe…" });
    for (let presses = 0; presses < 5; presses += 1) {
      await keyboard.press("Tab");
      if (await open.evaluate((each) => each === document.activeElement)) break;
    }
    await keyboard.press("Enter");
    await panel().getByText("Keys!C1:C4").waitFor();
    await keyboard.press("Escape");
    await panel().getByText("Keys!C1:C4").waitFor({ state: "detached" });
    await keyboard.press("Enter"); // focus is back on the button that opened it
    await panel().getByText("Keys!C1:C4").waitFor();
    await keyboard.press("Enter"); // and now on "Write"
    await panel()
      .getByText(/^Written into Keys!C1:C4/)
      .waitFor();
    expect(await bench.valueAt("Keys", "C1")).toBe("g adjusted");
    const sum = await Promise.all(["C2", "C3", "C4"].map((cell) => bench.valueAt("Keys", cell)));
    expect(sum.reduce<number>((all, value) => all + Number(value), 0)).toBe(1000);
  });

  test.each(THEMES)("nothing is objected to in %s, at 320, 350 and 640 px", async (name, media) => {
    const { page } = bench;
    await page.emulateMedia(media);
    await bench.select(sheet, `A${firstRow + SORBET}`);
    await heading("Lemon sorbet");
    await steerTo("scooped at −18");
    await panel().getByText("Limits", { exact: true }).first().click();
    await panel().getByRole("button", { name: "Put it beside the recipe…" }).click();
    const found = await objectionsAtWidths(bench, name);
    expect(found).toEqual([]);
    await panel().getByRole("button", { name: "Close", exact: true }).click();
  });

  test("nothing was asked of any other host, and the page reported no error", () => {
    expect(bench.foreign).toEqual([]);
    expect(bench.errors).toEqual([]);
  });
});
