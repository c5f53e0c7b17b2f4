import { headingAt } from "../../src/audit/answers/headingAt";
import { sheetFromRows } from "../../src/workbook/sheetFromRows";

const sheet = sheetFromRows("Chart", [
  ["Sugars in it", "Freezes at (°C)", "mango", "g", null],
  ["% of the weight", null, "Kesar", "g", "g"],
]);

test.each([
  [0, "Sugars in it, % of the weight"],
  [1, "Freezes at (°C)"],
  [2, "mango"],
  [3, "g"],
  [4, ""],
])("column %i is headed by its words, with a unit right below them", (column, heading) => {
  expect(headingAt(sheet, 0, column)).toBe(heading);
});
