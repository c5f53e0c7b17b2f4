import { moveFormula } from "../../src/workbook/moveFormula";

// Expected texts follow how every spreadsheet copies a formula (ECMA-376 part 1, 18.3.1.40, shared formulas).
test.each([
  ["A1+B2", 1, 1, "B2+C3"],
  ["$A1+A$1+$A$1", 2, 3, "$A3+D$1+$A$1"],
  ["SUM(B2:B9)/B$10", 0, 1, "SUM(C2:C9)/C$10"],
  ["Sheet2!A1+'My A1 sheet'!B1", 1, 0, "Sheet2!A2+'My A1 sheet'!B2"],
  ['LOG10(A1)&"A1 says ""A1"""', 1, 0, 'LOG10(A2)&"A1 says ""A1"""'],
  ["SUM(A:A)+SUM(3:4)", 1, 1, "SUM(B:B)+SUM(4:5)"],
  ["Batch[A1]+TAXES2024+Rate_A1", 1, 1, "Batch[A1]+TAXES2024+Rate_A1"],
  ["A1", -1, 0, "#REF!"],
  ["XFD1*2", 0, 1, "#REF!*2"],
  ["RIME.FREEZINGPOINT($B$1:$H$1,B2:H2)", 3, 0, "RIME.FREEZINGPOINT($B$1:$H$1,B5:H5)"],
])("%s copied %d down and %d right is %s #%#", (formula, down, right, expected) => {
  expect(moveFormula(formula, down, right)).toBe(expected);
});
