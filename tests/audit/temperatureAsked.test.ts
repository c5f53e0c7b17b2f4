import { temperatureAskedC } from "../../src/audit/temperatures/temperatureAsked";
import { bookOf } from "./bookOf";

const book = bookOf({
  Ice: [["Case stands at", -14]],
  "The case": [["At", -16, "cold"]],
});
const home = book.sheets[0]!;

test.each([
  ["RIME.ICEFRACTION(A4:A8,B4:B8,$B$1)", -14],
  ['100*RIME.ICEFRACTION(A4:A8,B4:B8,-12.5,"water")', -12.5],
  ["RIME.ICEFRACTION(A4:A8, B4:B8, 'The case'!B1, \"mix\")", -16],
  ["RIME.ICEFRACTION(A4:A8,B4:B8,'The case'!C1)", null],
  ["RIME.ICEFRACTION(A4:A8,B4:B8,Elsewhere!B1)", null],
  ["RIME.ICEFRACTION(A4:A8,B4:B8,B1-2)", null],
  ["RIME.FREEZINGPOINT(A4:A8,B4:B8,$B$1)", null],
  ["SUM(B4:B8)", null],
])("%s asks at %s", (formula, temperatureC) => {
  expect(temperatureAskedC(book, home, formula)).toBe(temperatureC);
});
