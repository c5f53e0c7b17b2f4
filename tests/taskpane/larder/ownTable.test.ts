import { callFunction } from "../../../src/worksheet/callFunction";
import { planRow, planSheet, type OwnPlan } from "../../../taskpane/larder/label/ownTable";
import type { OwnRow } from "../../../taskpane/larder/label/readLabel";
import type { BlockValue } from "../../../taskpane/host";
import { blockOf } from "../blockOf";

const JAM: OwnRow = [
  ["name", "Our jam"],
  ["water", 38],
  ["glucose", 30],
  ["fructose", 30],
  ["allergens", "none named on the label"],
];
const plain = (header: string) => header;
const COLUMNS_MORE = 6;

/** A range with its own width, as it is read: a row further down, some columns further right. */
const plan = (rows: BlockValue[][], row: OwnRow = JAM) => {
  const width = rows[0]!.length;
  const wide = rows.map((cells) => [...cells, ...Array<string>(COLUMNS_MORE).fill("")]);
  const below = Array<string>(width + COLUMNS_MORE).fill("");
  return planRow(blockOf([...wide, below], { at: "B3", sheet: "Own" }), width, row, plain);
};

const planned = (rows: BlockValue[][]) => {
  const found = plan(rows);
  expect(typeof found).toBe("object");
  return found as OwnPlan;
};

const freezes = (name: string, own: OwnPlan["matrix"]) =>
  callFunction("FREEZINGPOINT", [["water"], [name]], [[90], [10]], own)[0]?.[0];

describe("a new row in a range of own ingredients", () => {
  test("goes beneath it, into the columns there are, with new ones beside it", () => {
    const { edits, address } = planned([
      ["name", "same as", "water"],
      ["Milk", "whole milk", ""],
    ]);
    expect(edits.map(({ cell, to }) => `${cell} ${to}`)).toEqual([
      "E3 glucose",
      "F3 fructose",
      "G3 allergens",
      "B5 Our jam",
      "D5 38",
      "E5 30",
      "F5 30",
      "G5 none named on the label",
    ]);
    expect(address).toBe("B3:G5");
  });

  test("is understood by FREEZINGPOINT there, and the other rows still are", () => {
    const { matrix } = planned([
      ["name", "same as", "water"],
      ["Milk", "whole milk", ""],
    ]);
    expect(freezes("Our jam", matrix)).toBeLessThan(-0.5);
    expect(freezes("Milk", matrix)).toBe(freezes("whole milk", matrix));
  });

  test("finds columns headed in German, or with a unit, or in another order", () => {
    const { edits, matrix } = planned([
      ["Wasser (g)", "Fructose", "Name", "Traubenzucker, wasserfrei", "Preis", "Allergene"],
      [100, "", "Quelle", "", 1, ""],
    ]);
    expect(edits.map(({ cell }) => cell)).toEqual(["D5", "B5", "E5", "C5", "G5"]);
    expect(freezes("Our jam", matrix)).toBeLessThan(-0.5);
  });

  test("is refused where the name is there, the row below is taken, or no column is free", () => {
    const head = ["name", "water"];
    expect(plan([head, ["OUR  JAM", 50]])).toBe("named");
    const below = blockOf([
      ["name", "water", "", "", ""],
      ["Milk", 88, "", "", ""],
      ["", 12, "", "", ""],
    ]);
    expect(planRow(below, 2, JAM, plain)).toBe("below");
    const beside = blockOf([
      ["name", "water", "", "", ""],
      ["Milk", 88, "", "a note", ""],
      ["", "", "", "", ""],
    ]);
    expect(planRow(beside, 2, JAM, plain)).toBe("beside");
  });

  test("a formula that shows nothing counts as a filled cell", () => {
    const below = blockOf([
      ["name", "water", "", "", ""],
      ["Milk", 88, "", "", ""],
      ["", '=IF(1,"","") → ', "", "", ""],
    ]);
    expect(planRow(below, 2, JAM, plain)).toBe("below");
  });
});

test("on a sheet of its own it stands beneath its headers", () => {
  const { edits, address, matrix } = planSheet("Own", JAM, plain);
  expect(address).toBe("A1:E2");
  expect(edits).toHaveLength(10);
  expect(freezes("Our jam", matrix)).toBeLessThan(-0.5);
});
