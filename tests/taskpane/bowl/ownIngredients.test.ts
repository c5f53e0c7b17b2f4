import type { ShortCell } from "../../../src/workbook/sheetFromRows";
import { sheetFromRows } from "../../../src/workbook/sheetFromRows";
import { findOwnIngredients } from "../../../taskpane/bowl/ownIngredients";

const bookOf = (sheets: Record<string, readonly (readonly ShortCell[])[]>) => ({
  sheets: Object.entries(sheets).map(([name, rows]) => sheetFromRows(name, rows)),
  names: [],
  calculation: "automatic" as const,
  externalLinks: [],
});

describe("ranges of own ingredients", () => {
  test("are found by their headers, wherever the name column stands", () => {
    const book = bookOf({
      Prices: [
        ["name", "price"],
        ["Milk", 1.2],
      ],
      Own: [
        [],
        ["", "Water", "Name", "Sugars"],
        ["", 40, "House syrup", 60],
        ["", 88, "Market peaches", 10],
        [],
        ["", "", "a note"],
      ],
    });
    expect(findOwnIngredients(book)).toEqual([{ sheet: "Own", address: "B2:D4" }]);
  });

  test("a mapping of plain names counts, a header without rows does not", () => {
    const book = bookOf({
      Map: [
        ["Name", "Same as"],
        ["Milk", "milk, whole 3.25 %"],
      ],
      Blank: [["name", "water"]],
    });
    expect(findOwnIngredients(book)).toEqual([{ sheet: "Map", address: "A1:B2" }]);
  });
});
