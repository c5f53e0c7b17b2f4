import { demoBook } from "../../src/bench/demo/demoBook";
import { pantry, recipes } from "../../src/bench/demo/kitchen";
import { recipeCells } from "../../src/bench/demo/recipesSheet";
import { ingredients } from "../../src/catalogue/ingredients";
import { servingTargets } from "../../src/catalogue/targets";

describe("The demo book", () => {
  test("means by its plain names ingredients that the catalogue has", () => {
    const known = ingredients.map(({ name }) => name);
    for (const { sameAs } of pantry) if (sameAs !== null) expect(known).toContain(sameAs);
  });

  test("serves its recipes in ways that the catalogue has", () => {
    const known = servingTargets.map(({ name }) => name);
    for (const { target } of recipes) expect(known).toContain(target);
  });

  test("has at least ten recipes, of things it buys, each of more than one", () => {
    expect(recipes.length).toBeGreaterThanOrEqual(10);
    const bought = pantry.map(({ name }) => name);
    for (const { grams } of recipes) {
      expect(Object.keys(grams).length).toBeGreaterThan(1);
      for (const [name, amount] of Object.entries(grams)) {
        expect(bought).toContain(name);
        expect(amount).toBeGreaterThan(0);
      }
    }
  });

  test("fills a column of freezing points from one cell", () => {
    const rows = demoBook.sheets[0]!.rows.slice(recipeCells.firstRow - 1, recipeCells.lastRow);
    const withFormula = rows.filter((row) => row[1]?.formula !== undefined);
    expect(withFormula).toHaveLength(1);
    expect(rows).toHaveLength(recipes.length);
  });

  test("sets a number format wherever a number stands", () => {
    for (const { rows } of demoBook.sheets) {
      for (const cell of rows.flat()) {
        if (typeof cell?.value === "number") expect(cell.look?.numberFormat).toBeDefined();
      }
    }
  });
});
