import { formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

/** A dish as menus are costed: its list, then what is said of it. Each of the two below meets its own style only. */
const dish = (name: string, lines: Rows, style: string): Rows => [
  [name],
  ["Item", "Qty (g)"],
  ...lines,
  [],
  ["A portion costs (€)", 0.4],
  ["Ice goes out on", "stone plates"],
  ["Served with", "wafer"],
  ["Style", style],
];

const sorbet = dish(
  "Lemon ice",
  [
    ["water", 600],
    ["sugar", 190],
    ["dextrose monohydrate", 60],
  ],
  "scooped at −13",
);
const granita = dish(
  "Coffee ice",
  [
    ["water", 840],
    ["sugar", 160],
  ],
  "scraped granita",
);

test("what is said below a list is its own, though the next list begins nearer", () => {
  const found = findingsOf([...sorbet, [], [], ...granita]);
  expect(placesOf(found.filter(({ rule }) => rule === "misses-its-target"))).toEqual([]);
});

test("and what is said above a list, right under its title, is that list's", () => {
  const rows: Rows = [
    ...sorbet.slice(0, 5),
    [],
    [],
    ["Coffee ice"],
    ["Style", "scooped at −13"],
    ...granita.slice(1, 4),
  ];
  const found = findingsOf(rows);
  expect(placesOf(found.filter(({ rule }) => rule === "misses-its-target"))).toEqual([
    "B9 misses-its-target",
  ]);
});

test("as near to the next list as to its own, what is said below a list is still its own", () => {
  const [title, head, ...lines] = sorbet.slice(0, 5);
  const rows: Rows = [
    ...[title!, head!, ...lines],
    ["Ice at −16 °C, % of the mix", 51],
    ["Style", "scooped at −13"],
    ["Ice goes out on", "stone plates"],
    ...granita.slice(1, 4),
  ];
  const found = findingsOf(rows);
  expect(placesOf(found.filter(({ rule }) => rule === "misses-its-target"))).toEqual([]);
});

test("a label with its style above the next list is not the title of that", () => {
  const across = (title: string, water: number, style: string): Rows => [
    [title, "water", "sugar", "dextrose monohydrate"],
    ["one bucket, g", water, 190, 60],
    [],
    ["Freezing point (°C)", formula("RIME.FREEZINGPOINT(B1:D1,B2:D2)", -2.7)],
    ["Scooping", style],
  ];
  const thin = [
    ...across("Coffee ice", 1100, "scraped granita").slice(0, 3),
    ["Scooping", "scraped granita"],
  ];
  const two: Rows = [...across("Lemon ice", 600, "scooped at −13"), [], [], ...thin];
  const missed = (rows: Rows) =>
    placesOf(findingsOf(rows).filter(({ rule }) => rule === "misses-its-target"));
  expect(missed(two)).toEqual([]);
  expect(missed(two.with(1, ["one bucket, g", 1100, 190, 60]))).toEqual(["B5 misses-its-target"]);
});

test("what stands above the title of a list, below that of another, is the other's", () => {
  const thin: Rows = [["Coffee ice"], ["g", "Item"], [840, "water"], [160, "sugar"]];
  const dense: Rows = [
    ["Lemon ice"],
    ["g", "Item"],
    [600, "water"],
    [190, "sugar"],
    [60, "dextrose monohydrate"],
    [],
    ["Freezing point (°C)", "Water (g)"],
    [-2.7, 605],
    [],
  ];
  const missed = (rows: Rows) =>
    placesOf(findingsOf(rows).filter(({ rule }) => rule === "misses-its-target"));
  const style: Rows = [["want it", "scooped at −13"]];
  expect(missed([...dense, ...style, [], ...thin])).toEqual([]);
  // Below its title it is the second's.
  expect(missed([...dense, [], ["Coffee ice"], ...style, ...thin.slice(1)])).toEqual([
    "B12 misses-its-target",
  ]);
  // Above all lists it is the first's.
  expect(missed([...style, ["to eat", "by night"], [], ...thin])).toEqual(["B1 misses-its-target"]);
});

test("a style among answers is that of the list they read, though syrups stand nearer", () => {
  // Water and sucrose freeze at −1.5 °C here: too hard to be scooped at −13 °C.
  const rows: Rows = [
    ["Ingredient", "% w/w"],
    ["water", 80],
    ["sugar", 20],
    ["Check: must come to 100", 100],
    [],
    ["Freezing point (°C)", formula("RIME.FREEZINGPOINT(A2:A3,B2:B3)", -1.46)],
    ["Style", "scooped at −13"],
    ["Allergens: none."],
    [],
    ["Syrup", "Sucrose (g)", "Water (g)"],
    ["light", 150, 500],
    ["heavy", 390, 500],
  ];
  const found = findingsOf(rows).filter(({ rule }) => rule === "misses-its-target");
  expect(placesOf(found)).toEqual(["B7 misses-its-target"]);
});

/** Lists with their styles two rows below them, as far as from the next. */
const apart = (style: string): Rows => [
  ["Lemon ice", "g"],
  ...sorbet.slice(2, 5),
  [],
  [],
  ["Cups from it", 8],
  ["Style", "scooped at −13"],
  [],
  [],
  ["Coffee ice", "g"],
  ...granita.slice(2, 4),
  [],
  [],
  ["Cups from it", 9],
  ["Style", style],
];

test("what is as far from a list as from the next is the one's below which its like stands", () => {
  const missed = (style: string) =>
    findingsOf(apart(style)).filter(({ rule }) => rule === "misses-its-target");
  expect(placesOf(missed("scraped granita"))).toEqual([]);
  expect(placesOf(missed("scooped at −13"))).toEqual(["B17 misses-its-target"]);
});
