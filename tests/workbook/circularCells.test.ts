import { cellName } from "../../src/workbook/address";
import { circularCells } from "../../src/workbook/circularCells";
import type { DefinedName } from "../../src/workbook/model";
import { bookOf, formula, type Rows } from "../audit/bookOf";

const circlesOf = (
  sheets: Readonly<Record<string, Rows>>,
  names: readonly DefinedName[] = [],
): string[][] =>
  circularCells(bookOf(sheets, {}, { names })).map((circle) =>
    circle.map(({ sheet, row, column }) => `${sheet}!${cellName(row, column)}`).sort(),
  );

test("a cell that reads itself, two that read each other, and a circle over two sheets", () => {
  expect(circlesOf({ S: [[formula("A1+1", 0)]] })).toEqual([["0!A1"]]);
  expect(circlesOf({ S: [[formula("SUM(A1:B2)", 0), 1]] })).toEqual([["0!A1"]]);
  expect(circlesOf({ S: [[formula("B1", 0), formula("A1*2", 0)]] })).toEqual([["0!A1", "0!B1"]]);
  const two = { S: [[formula("'T 2'!A1", 0)]], "T 2": [[formula("S!$A$1", 0)]] };
  expect(circlesOf(two)).toEqual([["0!A1", "1!A1"]]);
});

test("a circle through a name", () => {
  const names = [{ name: "total", refersTo: "S!$A$1:$A$3", sheet: null }];
  expect(circlesOf({ S: [[1], [2], [formula("SUM(Total)/2", 0)]] }, names)).toEqual([["0!A3"]]);
});

test("what only looks like a circle is none", () => {
  const rows: Rows = [
    [1, formula("A1", 1), formula('"C1"&B1', 1)],
    [2, formula("SUM(A$1:A2)+B1", 4), formula("B2*$B$1", 1)],
    [formula("T!C2", 1), formula("LOG10(B2)", 4), formula("[2]S!B3", 1)],
  ];
  expect(circlesOf({ S: rows, T: [[formula("S!A1", 1)]] })).toEqual([]);
});

test("every cell of a long chain of sums over what follows is read once", () => {
  const rows = 20_000;
  const column = (last: string): Rows =>
    Array.from({ length: rows }, (_, row) => [
      formula(row === rows - 1 ? last : `SUM(A${row + 2}:A${rows})`, 1),
    ]);
  expect(circlesOf({ S: column("1") })).toEqual([]);
  const [circle] = circlesOf({ S: column("A1") });
  expect(circle).toHaveLength(rows);
});
