import fc from "fast-check";
import {
  cellName,
  columnName,
  parseCellName,
  parseRangeName,
  rangeName,
} from "../../src/workbook/address";

test("the last column of a sheet is XFD", () => expect(columnName(16383)).toBe("XFD"));

test("every place has an address that leads back to it", () => {
  const row = fc.integer({ min: 0, max: 1048575 });
  const column = fc.integer({ min: 0, max: 16383 });
  fc.assert(
    fc.property(row, column, (r, c) => {
      expect(parseCellName(cellName(r, c))).toEqual({ row: r, column: c });
    }),
  );
});

test("a range is named by its corners, a single cell by itself", () => {
  expect(rangeName({ top: 0, left: 1, bottom: 8, right: 1 })).toBe("B1:B9");
  expect(rangeName({ top: 4, left: 26, bottom: 4, right: 26 })).toBe("AA5");
  expect(parseRangeName("$C$9:A2")).toEqual({ top: 1, left: 0, bottom: 8, right: 2 });
});

test.each(["", "A0", "XFE1", "A1048577", "1A", "A1:B2:C3", "A:B"])("%s is no address", (text) => {
  expect(parseRangeName(text)).toBeNull();
});
