import { readsTheSame } from "../../src/audit/formulas/readsTheSame";
import { sheetFromRows } from "../../src/workbook/sheetFromRows";

const sheet = sheetFromRows("Bowl", [
  ["Into the machine", "grams"],
  ["water", 600],
  ["honey", null],
  ["fructose", null],
  ["bowl", 600],
]);

test.each([
  ["SUM(B2:B3)", "SUM(B2:B4)"],
  ["B2+B3", "B2+B4"],
])("a blank line changes nothing of what is added: %s, %s", (one, other) => {
  expect(readsTheSame(sheet, one, other)).toBe(true);
});

test.each([
  ["100*B3/$B$5", "100*B4/$B$5"],
  ["B3/1000", "B4/1000"],
  ["SUM(B2:B3)", "SUM(B3:B4)"],
])("a share of the blank line above is not that of its own: %s, %s", (one, other) => {
  expect(readsTheSame(sheet, one, other)).toBe(false);
});
