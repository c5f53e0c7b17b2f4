import { addressed } from "../../src/workbook/addressed/addressed";
import { bookOf, formula, type Rows } from "../audit/bookOf";

/** Numbers in A1:C4 but a word in A4 and a blank in B4. */
const added = (text: string) => {
  const rows: Rows = [
    [1, 2, 3, formula(text, 1)],
    [4, 5, 6],
    [7, 8, 9],
    ["12", null, 10],
  ];
  return addressed(bookOf({ Sheet1: rows })).sheets[0]!.cellAt(0, 3);
};

test.each([
  ["A1+A2+A3", "SUM(A1:A3)"],
  ["A1 + B1 + C1", "SUM(A1:C1)"],
  ["$B$1+$B$2", "SUM($B$1:$B$2)"],
  ["B1+B2+B3+B4", "SUM(B1:B4)"],
  ["C1/(C1+C2+C3)*100", "C1/SUM(C1:C3)*100"],
  ["ROUND(A1+A2,1)", "ROUND(SUM(A1:A2),1)"],
  ["MAX(1,(B1+B2))", "MAX(1,SUM(B1:B2))"],
])("cells added one by one, %s, are read as %s", (text, expected) => {
  expect(added(text)).toEqual({ value: 1, formula: expected, written: text });
});

test.each([
  // A sum skips a number that is text, an addition takes it.
  ["A1+A2+A3+A4"],
  ["A1+A3"],
  ["A2+A1"],
  ["A1+B2"],
  ["A1+$A2"],
  ["A1+A2*2"],
  ["A1+A2-A3"],
  ["2*A1+A2"],
  ["ABS(A1)+A2"],
  ["Other!A1+A2"],
  ['"(A1+A2)"'],
])("%s is no sum and stays as it is", (text) => {
  expect(added(text)).toEqual({ value: 1, formula: text });
});
