import { goesByName } from "../../src/audit/formulas/goesByName";
import { bookOf } from "./bookOf";

/** A list with a free row, and a batch below that has none. */
const book = bookOf({
  Sheet1: [["water", 60], [], ["sugar", 40], ["Batch (kg)", 20], ["water", 12], ["sugar", 8]],
  "Prices 1": [
    ["cream", 4],
    ["water", 0.01],
    ["sugar", 1.2],
  ],
});
const of = (formula: string, expected: string) =>
  goesByName(book, book.sheets[0]!, { row: 4, column: 1 }, formula, expected);

test("a formula that reads the row of its own name is as right as one that reads the next row", () => {
  expect(of("B1/100*B$4", "B2/100*B$4")).toBe(true);
});

test("not one that reads another name's row, or works otherwise", () => {
  expect(of("B3/100*B$4", "B2/100*B$4")).toBe(false);
  expect(of("B1/10*B$4", "B2/100*B$4")).toBe(false);
  expect(of("B1/100*B$3", "B2/100*B$4")).toBe(false);
});

test("not one that reads its own name beside the row that slipped", () => {
  expect(of("B3/B1", "B4/B1")).toBe(false);
});

test("a price that stands in the row of its name on another sheet is the right one", () => {
  expect(of("'Prices 1'!B2", "'Prices 1'!B3")).toBe(true);
  expect(of("'Prices 1'!B3", "'Prices 1'!B2")).toBe(false);
});
