import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";

const namesIn = (rows: Rows) =>
  auditContext(bookOf({ Tagebuch: rows }), []).blocks.map(({ names }) =>
    names.map(({ item }) => item),
  );

const LEMON = ["Wasser", "Zucker", "Zitronensaft"] as const;
const MILK = ["Vollmilch", "Zucker", "Honig"] as const;
const lines = (items: readonly string[]): Rows => items.map((item, at) => [item, 500 - 150 * at]);

/** Two lists below each other, each under its title alone, with one blank row between. */
const diary = (sum: Rows[number][number], second: Rows[number], ...more: Rows): Rows => [
  ["Zitroneneis", null, null, "Note: 2+"],
  ...lines(LEMON),
  ["macht", sum, null, "so gewollt:", "Kugeln bei −13"],
  [],
  second,
  ...lines(MILK),
  ["macht", formula("SUM(B8:B10)", 1050)],
  ...more,
];
const LEMON_SUM = formula("SUM(B2:B4)", 1050);
const TITLE = ["Honig-Milcheis", null, null, "Note: 1"];

test("a title after a sum and a blank row begins another list", () => {
  expect(namesIn(diary(LEMON_SUM, TITLE))).toEqual([LEMON, MILK]);
});

test("parts that are added up below are one recipe", () => {
  const parts = diary(LEMON_SUM, ["Milch", null], ["zusammen", formula("B5+B11", 2100)]);
  const all = namesIn(parts).flat();
  expect(namesIn(parts)).toHaveLength(1);
  expect(all).toEqual(expect.arrayContaining(["Wasser", "Vollmilch"]));
});

test("so are parts that are added up above them", () => {
  const rows: Rows = [
    ["Eimer komplett", formula("B6+B12", 2100)],
    ...diary(formula("SUM(B3:B5)", 1050), ["Milch", null]),
  ];
  expect(namesIn(rows)).toHaveLength(1);
});

test("without a sum, or with an amount beside them, words begin no list", () => {
  const isOne = (rows: Rows) =>
    namesIn(rows).some((names) => names.includes("Wasser") && names.includes("Vollmilch"));
  expect(isOne(diary(LEMON_SUM, TITLE))).toBe(false);
  expect(isOne(diary(LEMON_SUM, ["Sahne 35 %", 100]))).toBe(true);
});
