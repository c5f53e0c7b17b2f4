import { newSheet } from "./benchPage";
import { describeInBrowser } from "./chromium";
import { objectionsAtWidths, openPaneBench, THEMES, type PaneBench } from "./paneBench";

describeInBrowser("a newcomer's first minutes", () => {
  let bench: PaneBench;
  beforeAll(async () => {
    bench = await openPaneBench();
    bench.page.setDefaultTimeout(15_000);
    await newSheet(bench.page, "Blank", []);
    await bench.select("Blank", "C3");
  }, 300_000);
  afterAll(() => bench.close());

  const panel = () => bench.pane.locator('[role="tabpanel"]:not([hidden])');
  const tab = (name: string) => bench.pane.getByRole("tab", { name }).click();
  /** Presses Tab until the element has the focus. */
  const tabTo = async (name: string, most = 30) => {
    const button = panel().getByRole("button", { name, exact: true });
    for (let presses = 0; presses < most; presses += 1) {
      if (await button.evaluate((each) => each === document.activeElement)) return;
      await bench.page.keyboard.press("Tab");
    }
    throw new Error(`The focus never reached “${name}”.`);
  };

  test.each(THEMES)(
    "the first lines and the help are accessible in %s",
    async (name, media) => {
      await bench.page.emulateMedia(media);
      await panel().getByRole("button", { name: "Put an example on a new sheet" }).waitFor();
      const help = bench.pane.locator(".help summary");
      await help.focus();
      await bench.page.keyboard.press("Enter");
      await bench.pane.getByText("Click into a recipe: names in one column").waitFor();
      expect(await objectionsAtWidths(bench, name)).toEqual([]);
      await bench.page.keyboard.press("Escape");
      await bench.pane.getByText("Click into a recipe: names in one column").waitFor({
        state: "hidden",
      });
    },
    60_000,
  );

  test("one button puts an example on a new sheet, and the Bowl answers as its cells do", async () => {
    await panel().getByRole("button", { name: "Put an example on a new sheet" }).click();
    await panel()
      .getByRole("heading", { name: /^Lemon ice/ })
      .waitFor();
    const shown = await panel().locator("data.headline-value").getAttribute("value");
    const inCell = Number(await bench.valueAt("Lemon ice", "B9"));
    expect(Math.abs(Number(shown) / inCell - 1)).toBeLessThan(1e-11);
    expect(await bench.valueAt("Lemon ice", "B11")).toBe("meets scooped at −13");
  });

  test("a target of one's own, by keyboard: written, kept, chosen, and the cell says what the Bowl says", async () => {
    const { keyboard } = bench.page;
    await tab("Aims");
    for (const [name, ...numbers] of [
      ["market scoop", "-11", "60", "62"],
      ["market block", "-20", "85", "95"],
    ] as const) {
      await tabTo("Add a target…");
      await keyboard.press("Enter");
      for (const typed of [name, ...numbers]) {
        await keyboard.type(typed);
        await keyboard.press("Tab");
      }
      await keyboard.press("Tab"); // past the choice of water or mix
      await tabTo("Save");
      await keyboard.press("Enter");
      await panel().getByText(`“${name}” is saved.`).waitFor();
    }
    await tabTo("Keep in the workbook");
    await keyboard.press("Enter");
    await panel().getByText("Kept in Aims.").waitFor();
    await tab("Bowl");
    await bench.select("Lemon ice", "A4");
    await panel().getByLabel("Meant to be").selectOption("market block");
    const verdict = panel().locator(".target-check strong");
    await verdict.getByText(/too|meets/).waitFor();
    await bench.select("Lemon ice", "G2");
    await bench.select("Lemon ice", "A4");
    await panel().getByRole("button", { name: "Put a formula in the sheet…" }).click();
    await bench.select("Lemon ice", "G2");
    await panel().getByLabel("Check against the target").check();
    await panel().getByRole("button", { name: "Write", exact: true }).click();
    await panel().getByText("Written into Lemon ice!G2.").waitFor();
    expect(await bench.formulaAt("Lemon ice", "G2")).toMatch(/^=INDEX\(RIME\.CHECK\(/);
    const inCell = await bench.valueAt("Lemon ice", "G2");
    expect(inCell).toMatch(/^too soft: \d/);
    expect(await verdict.innerText()).toBe(inCell);
  }, 60_000);

  test("what is changed on the sheet is what the pane goes by", async () => {
    await bench.write("Aims", "D3", "=0.99");
    await bench.write("Aims", "C3", "=0.01");
    await panel().getByRole("button", { name: "Close", exact: true }).first().click();
    await bench.select("Lemon ice", "A5");
    await panel().locator(".target-check strong").getByText("meets market block").waitFor();
    expect(await bench.valueAt("Lemon ice", "G2")).toBe("meets market block");
    await tab("Steer");
    await panel().getByLabel("Meant to be").waitFor();
    expect(await panel().getByLabel("Meant to be").inputValue()).toBe("market block");
  });

  test.each(THEMES)(
    "the targets' view is accessible in %s, at 320, 350 and 640 px",
    async (name, media) => {
      await bench.page.emulateMedia(media);
      await tab("Aims");
      await panel().getByRole("button", { name: "Change “market scoop”" }).waitFor();
      const isOpen = await panel().getByLabel("Note").count();
      if (isOpen === 0)
        await panel().getByRole("button", { name: "Change “market scoop”" }).click();
      await panel()
        .getByText(/^The catalogue’s/)
        .click();
      expect(await objectionsAtWidths(bench, name)).toEqual([]);
    },
    60_000,
  );

  test("the page reported no error and asked no other host", () => {
    expect(bench.foreign).toEqual([]);
    expect(bench.errors).toEqual([]);
  });
});
