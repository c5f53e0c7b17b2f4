import { recipeCells } from "../../src/bench/demo/recipesSheet";
import { describeInBrowser } from "./chromium";
import { objections, startPaneBenches, type PaneBench, type PaneBenches } from "./paneBench";

const { sheet, firstRow, lastRow, columns } = recipeCells;

describeInBrowser("the pane beside the demo book", () => {
  let benches: PaneBenches;
  let bench: PaneBench;
  beforeAll(async () => {
    benches = await startPaneBenches();
    bench = await benches.open();
  }, 300000);
  afterAll(async () => {
    await benches.close();
  });

  const tab = (name: string) => bench.pane.getByRole("tab", { name }).click();
  const panel = () => bench.pane.locator('[role="tabpanel"]:not([hidden])');

  test("the bowl shows each recipe's freezing point exactly as its cell does", async () => {
    await tab("Bowl");
    for (let row = firstRow; row <= lastRow; row += 1) {
      await bench.select(sheet, `A${row}`);
      const name = await bench.valueAt(sheet, `A${row}`);
      await panel()
        .getByRole("heading", { name: String(name), exact: true })
        .waitFor();
      const shown = await panel().locator("data.headline-value").getAttribute("value");
      const inCell = Number(await bench.valueAt(sheet, `${columns.freezingPoint}${row}`));
      expect(inCell).toBeLessThan(0);
      // The grid keeps 12 digits of a number.
      expect(Math.abs(Number(shown) / inCell - 1)).toBeLessThan(1e-11);
    }
  });

  test("the bowl checks a recipe against a target and takes another serving temperature", async () => {
    await tab("Bowl");
    await bench.select(sheet, `A${firstRow}`);
    const targets = panel().getByLabel("Meant to be");
    await targets.waitFor();
    await targets.selectOption({ index: 1 });
    await panel().locator(".target-check strong").waitFor();
    const check = await panel().locator(".target-check strong").innerText();
    expect(check).toMatch(/^meets |ice at/);
    await panel()
      .getByLabel(/Served at/)
      .fill("−9,5");
    await panel()
      .getByRole("columnheader", { name: /−9.5 °C/ })
      .waitFor();
  });

  test("the bowl reads a recipe in cups and spoons from its column of grams", async () => {
    await tab("Bowl");
    await bench.select("Apricot bars", "A6");
    await panel().locator("data.headline-value").waitFor();
    const shown = await panel().locator("data.headline-value").getAttribute("value");
    const inCell = Number(await bench.valueAt("Apricot bars", "D13"));
    await expect(bench.valueAt("Apricot bars", "A13")).resolves.toMatch(/Freezes from/);
    expect(Math.abs(Number(shown) / inCell - 1)).toBeLessThan(1e-11);
  });

  test("a misspelt name is answered by the function's sentence, beside the way to the cell", async () => {
    await bench.page.evaluate(() =>
      window.rimelineBench?.grid.write("Apricot bars", { top: 5, left: 0, bottom: 5, right: 0 }, [
        ["Sugr"],
      ]),
    );
    await bench.select("Apricot bars", "A5");
    await panel().getByText(/Sugr/).first().waitFor();
    await panel().getByRole("button", { name: "A6 Sugr" }).click();
    const selected = await bench.page.evaluate(() => window.rimelineBench?.grid.selection());
    expect(selected).toMatchObject({ sheet: "Apricot bars", range: { top: 5, left: 0 } });
    await bench.page.evaluate(() =>
      window.rimelineBench?.grid.write("Apricot bars", { top: 5, left: 0, bottom: 5, right: 0 }, [
        ["Sugar"],
      ]),
    );
  });

  test("the larder finds by a German name, and inserts a formula by keyboard alone", async () => {
    await bench.select("Apricot bars", "H4");
    await tab("Larder");
    await panel().getByRole("searchbox").click();
    await bench.page.keyboard.type("Haushaltszucker");
    await bench.page.keyboard.press("Tab");
    const { keyboard } = bench.page;
    await panel().locator("button.hit").first().focus();
    await keyboard.press("Enter");
    await panel().getByRole("heading", { name: "sucrose", exact: true }).waitFor();
    await panel().getByRole("button", { name: "Insert molar mass…" }).focus();
    await keyboard.press("Enter");
    await panel().getByText("Apricot bars!H4").waitFor();
    await panel().getByRole("button", { name: "Write" }).focus();
    await keyboard.press("Enter");
    await panel().getByText("Written into Apricot bars!H4.").waitFor();
    const value = await bench.valueAt("Apricot bars", "H4");
    expect(Number(value)).toBeCloseTo(342.3, 1); // IUPAC atomic weights 2021: C12H22O11
  });

  test("a filled cell is kept until the second button is pressed", async () => {
    await panel().getByLabel("Value").check();
    await panel().getByRole("button", { name: "Write" }).click();
    await panel()
      .getByText(/is not empty/)
      .waitFor();
    const before = await bench.page.evaluate(() => {
      const cell = { top: 3, left: 7, bottom: 3, right: 7 };
      return window.rimelineBench?.grid.read("Apricot bars", cell).formulas[0]?.[0];
    });
    expect(before).toMatch(/^=RIME\.SOLUTE/);
    await panel()
      .getByRole("button", { name: /^Replace what is in/ })
      .click();
    await panel().getByText("Written into").waitFor();
    const after = await bench.page.evaluate(() => {
      const cell = { top: 3, left: 7, bottom: 3, right: 7 };
      return window.rimelineBench?.grid.read("Apricot bars", cell).formulas[0]?.[0];
    });
    expect(after).toBe("");
  });

  test("the read-through lists findings and jumps to one's cell", async () => {
    await bench.page.evaluate(() =>
      window.rimelineBench?.grid.write("Apricot bars", { top: 5, left: 0, bottom: 5, right: 0 }, [
        ["Sugr"],
      ]),
    );
    await tab("Read-through");
    await panel().getByRole("button", { name: /Read/ }).first().click();
    await panel().getByRole("heading", { level: 2 }).waitFor({ timeout: 60000 });
    const go = panel()
      .getByRole("button", { name: /Go to Apricot bars!/ })
      .first();
    const place = (await go.innerText()).split("!")[1];
    await bench.select(sheet, "A1");
    await go.click();
    const selected = await bench.page.evaluate(() => window.rimelineBench?.grid.selection());
    expect(selected?.sheet).toBe("Apricot bars");
    expect(place).toMatch(/^[A-Z]+\d+/);
  });

  test("nothing was asked of any other host", () => {
    expect(bench.foreign).toEqual([]);
  });
});

describeInBrowser("the pane is accessible", () => {
  let benches: PaneBenches;
  beforeAll(async () => {
    benches = await startPaneBenches();
  }, 300000);
  afterAll(async () => {
    await benches.close();
  });

  test.each(["light", "dark"] as const)(
    "in the %s theme, at 320, 350 and 640 px",
    async (scheme) => {
      const { page, pane, select } = await benches.open(scheme);
      await select(sheet, `A${firstRow}`);
      const found: string[] = [];
      for (const width of [320, 350, 640]) {
        await page.evaluate((px) => {
          const frame = document.getElementById("pane");
          if (frame !== null) frame.style.width = `${px}px`;
        }, width);
        for (const name of ["Bowl", "Larder", "Read-through"]) {
          await pane.getByRole("tab", { name }).click();
          if (name === "Bowl") await pane.locator(".headline").waitFor();
          if (name === "Larder" && (await pane.getByRole("searchbox").isVisible())) {
            await pane.getByRole("searchbox").fill("honey");
            await pane.locator("button.hit").first().click();
          }
          if (name === "Read-through") {
            await pane.getByRole("button", { name: /^Read/ }).first().click();
            await pane.getByRole("heading", { level: 2 }).last().waitFor();
          }
          found.push(...(await objections(pane)).map((one) => `${name}, ${width}: ${one}`));
          const overflow = await pane.evaluate(
            () => document.documentElement.scrollWidth - innerWidth,
          );
          if (overflow > 0) found.push(`${name}, ${width}: ${overflow} px too wide`);
        }
      }
      expect(found).toEqual([]);
    },
    180000,
  );
});
