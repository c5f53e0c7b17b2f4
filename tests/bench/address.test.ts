import { parseA1, splitSheet } from "../../src/bench/address";
import { quotedSheet } from "../../src/workbook/quotedSheet";

describe("Addresses", () => {
  test.each([
    ["B2", { top: 1, left: 1, bottom: 1, right: 1 }],
    ["$B$2:H9", { top: 1, left: 1, bottom: 8, right: 7 }],
    ["H9:B2", { top: 1, left: 1, bottom: 8, right: 7 }],
    ["B:C", { top: 0, left: 1, bottom: 1048575, right: 2 }],
    ["3:5", { top: 2, left: 0, bottom: 4, right: 16383 }],
    ["XFD1048576", { top: 1048575, left: 16383, bottom: 1048575, right: 16383 }],
  ])("%s", (address, range) => {
    expect(parseA1(address)).toEqual(range);
  });

  test.each(["", "B", "7", "A0", "XFE1", "A1048577", "A1:B", "A1:B2:C3", "a name"])(
    "%p is none",
    (text) => {
      expect(parseA1(text)).toBeNull();
    },
  );

  test.each([
    ["Recipes", "Recipes"],
    ["Lemon ice", "'Lemon ice'"],
    ["Cook's list", "'Cook''s list'"],
    ["AB12", "'AB12'"],
    ["2024", "'2024'"],
  ])("the sheet %s is written %s, and read back", (name, written) => {
    expect(quotedSheet(name)).toBe(written);
    expect(splitSheet(`${written}!B2`)).toEqual({ sheet: name, address: "B2" });
  });
});
