import { linkedWorkbook } from "../../src/workbook/linkedWorkbook";

test.each([
  ["[1]Stock!B2", "1"],
  ["'[store list.xlsx]Stock room'!$B$2*2", "store list.xlsx"],
  ["SUM('C:\\books\\[store.xlsx]Stock'!B2:B9)", "store.xlsx"],
  ["[2]!Prices", "2"],
  ["Stock!B2+'Stock room'!B2", null],
  ["[@Grams]*Prices!B2", null],
  ["Mix[[#This Row],[Grams]]*Prices!B2", null],
  ['"[1]Stock!B2"&"[2]!x"', null],
])("%s reads workbook %s", (formula, book) => expect(linkedWorkbook(formula)).toBe(book));
