import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

/** Two flavours whose bowls are counted above their ingredients, and sums from a row on. */
function bowls(
  from: number,
  heading: string | null,
  first: string = "Bowls (pieces)",
): Tried["sheets"] {
  const sum = (column: string, value: number) => formula(`SUM(${column}${from}:${column}7)`, value);
  const rows: Rows = [
    ["Flavour", "Milk ice", "Peach ice"],
    [first, 20, 20],
    [heading],
    ["whole milk", 700, null],
    ["peach", null, 500],
    ["sucrose", 120, 100],
    ["water", null, 200],
    ["weighs", sum("B", from === 2 ? 840 : 820), sum("C", from === 2 ? 820 : 800)],
  ];
  return { Amounts: rows };
}

/** "Milk" warns of the milk, so that nothing else is to be told. */
const withCaution = (sheets: Tried["sheets"]): Tried["sheets"] => ({
  ...sheets,
  Board: [["Contains milk."]],
});

describe("A line between the titles of recipes and their ingredients", () => {
  test.each<Tried>([
    {
      what: "counts bowls above a heading of the ingredients",
      sheets: withCaution(bowls(4, "In one bowl, in g")),
      found: [],
    },
    {
      what: "counts bowls and is in no total",
      sheets: withCaution(bowls(4, null)),
      found: [],
    },
    {
      what: "is an ingredient that both totals leave out",
      sheets: withCaution(bowls(4, null, "dextrose monohydrate")),
      found: ["total-incomplete Amounts!B8", "total-incomplete Amounts!C8"],
    },
    {
      what: "is unknown, and is in the totals",
      sheets: withCaution(bowls(2, null, "Grandmother's mixture")),
      found: ["unknown-ingredient Amounts!A2"],
    },
  ])("$what", expectFound);
});
