import { unitText } from "../../src/audit/recipes/amounts/unit";
import { findRecipes } from "../../src/audit/recipes/findRecipes";
import { bookOf, formula, type Rows } from "./bookOf";
import { expectFound } from "./tried";

type Need = (row: number) => string;

const counted: Need = (row) => `SUMPRODUCT(B${row}:D${row},$B$2:$D$2)/1000`;
const counts: Need = (row) => `(B${row}*$B$2+C${row}*$C$2+D${row}*$D$2)/1000`;
const added: Need = (row) => `SUM(B${row}:D${row})/1000`;

const LINES: readonly Rows[number][] = [
  ["Wasser", null, 600, 500],
  ["Zucker", 440, 180, 170],
  ["Orangensaft", 3280, null, null],
  ["Zitronensaft", null, 120, null],
  ["Dextrose-Monohydrat", null, null, 60],
  ["Himbeeren", null, null, 400],
];

/** A column for each of three ices, and what so many batches of each need. */
const order = (need: Need): Rows => [
  ["Gäste", 120],
  ["Ansätze", 2, 3, 1],
  [],
  ["ein Ansatz in g", "Orangeneis", "Zitroneneis", "Himbeereis", "Bedarf (kg)"],
  ...LINES.map((line, at): Rows[number] => [...line, formula(need(5 + at), 1 + at)]),
  [],
  ["Gefrierpunkt (°C)", 2.2, -1.6, -2.2],
];

const columnsOf = (rows: Rows) =>
  findRecipes(bookOf({ Eis: rows })).blocks.flatMap(({ recipes }) =>
    recipes.map(({ line, unit }) => `${line} ${unitText(unit)}`),
  );

test.each([counted, counts])("what several batches need is made of recipes: %p", (need) => {
  expect(columnsOf(order(need))).toEqual(["1 g", "2 g", "3 g", "4 kg"]);
});

test("columns that are only added up may be days", () => {
  expect(columnsOf(order(added))).toEqual(["4 kg"]);
});

test("each of them has answers of its own", () => {
  const found = ["freezing-point-sign Eis!B12"];
  expectFound({ what: "", sheets: { Eis: order(counted) }, found });
});

/** What is to be bought of each, which is nothing where enough is there; one is typed. */
const shopping = (need: (row: number) => string): Rows => [
  ["Zutat", "Bedarf (kg)", "Lager (kg)", "Bestellen (kg)"],
  ...["Wasser", "Zucker", "Vollmilch", "Sahne 35 %", "Dextrose-Monohydrat"].map(
    (name, at): Rows[number] => {
      const [wanted, there] = [5 - at, at === 2 ? 9 : 0.5];
      const missing = Math.max(0, wanted - there);
      return [name, wanted, there, at === 2 ? 0 : formula(need(at + 2), missing)];
    },
  ),
];

test("a 0 is overwritten where the formula gives one by itself, else it is what is free", () => {
  const tried = (need: (row: number) => string, found: readonly string[]) => {
    expectFound({ what: "", sheets: { Eis: shopping(need) }, found });
  };
  tried((row) => `MAX(0,B${row}-C${row})`, ["formula-overwritten Eis!D4"]);
  tried((row) => `B${row}-C${row}`, []);
});
