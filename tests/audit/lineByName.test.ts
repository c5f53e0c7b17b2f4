import { lineByName } from "../../src/audit/formulas/lineByName";
import { formula, bookOf, type Rows } from "./bookOf";

/** Masses over the molar masses of a table beside them, each from the row of its own name. */
const beside = (cells: readonly (readonly [string, string, string | number])[]): Rows =>
  cells.map(([name, mass, own], at) => [
    `Pair ${at + 1}`,
    name,
    Number(mass),
    typeof own === "number" ? own : formula(own, 1),
    "",
    ["NaCl", "sucrose", "KCl", "glucose", "fructose"][at] ?? "",
    58.44 + at,
  ]);

const RIGHT = [
  ["KCl", "3", "C1/G3"],
  ["NaCl", "4", "C2/G1"],
  ["fructose", "5", "C3/G5"],
  ["glucose", "6", "C4/G4"],
  ["sucrose", "7", "C5/G2"],
] as const;

function strangersIn(rows: Rows, others: Readonly<Record<string, Rows>> = {}) {
  const book = bookOf({ Sheet1: rows, ...others });
  const sheet = book.sheets[0]!;
  const placeAt = (at: number) => ({ row: at, column: 3 });
  const line = lineByName(book, sheet, { length: rows.length, placeAt });
  return line?.strangers.map((place) => line.expectedAt?.(place));
}

const changed = (at: number, own: string | number) =>
  beside(RIGHT.map((row, each) => (each === at ? [row[0], row[1], own] : row)));

test("formulas that choose their rows by name are alike", () => {
  expect(strangersIn(beside(RIGHT))).toEqual([]);
});

test("what does not belong among them is found with what belongs there", () => {
  expect(strangersIn(changed(1, "C2/G2"))).toEqual(["C2/G1"]);
  expect(strangersIn(changed(1, "C3/G1"))).toEqual(["C2/G1"]);
  expect(strangersIn(changed(2, "C3+G5"))).toEqual(["C3/G5"]);
  expect(strangersIn(changed(4, 0.02))).toEqual(["C5/G2"]);
});

test("the names may stand on another sheet", () => {
  const rows = (last: string): Rows =>
    ["sugar", "cream", "water", "milk"].map((name, at) => [
      name,
      100 * (at + 1),
      "g",
      formula(["Prices!C3*B1", "Prices!C1*B2", "Prices!C4*B3", last][at] ?? "", 1),
    ]);
  const Prices: Rows = ["cream", "milk", "sugar", "water"].map((name, at) => [name, "Ada", at + 1]);
  expect(strangersIn(rows("Prices!C2*B4"), { Prices })).toEqual([]);
  expect(strangersIn(rows("Prices!C1*B4"), { Prices })).toEqual(["Prices!C2*B4"]);
});

test("formulas that read any rows are no line, nor are those of one column only", () => {
  const any = ["C1/G2", "C2/G4", "C3/G1", "C4/G5", "C5/G3"];
  expect(strangersIn(beside(RIGHT.map(([name, mass], at) => [name, mass, any[at] ?? ""])))).toBe(
    undefined,
  );
  expect(strangersIn(beside(RIGHT.map(([name, mass], at) => [name, mass, `C${at + 1}/2`])))).toBe(
    undefined,
  );
});
