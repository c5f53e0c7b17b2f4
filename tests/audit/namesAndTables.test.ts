import { auditWorkbook } from "../../src/audit/auditWorkbook";
import type { DefinedName } from "../../src/workbook/model";
import { bookOf, formula, type Rows } from "./bookOf";

const COST = "Mix[@[Weight (g)]]*Mix[@[Price (€/kg)]]/1000";
const table = {
  name: "Mix",
  range: { top: 0, left: 0, bottom: 5, right: 3 },
  columns: ["Ingredient", "Weight (g)", "Price (€/kg)", "Cost (€)"],
  hasTotals: true,
};

/** A list kept as a table, its costs worked out with the table's own columns but for one row. */
function costing(odd: string | number) {
  const cost = (weight: number, price: number) => formula(COST, (weight * price) / 1000);
  const rows: Rows = [
    table.columns,
    ["water", 600, 1, cost(600, 1)],
    ["sugar", 180, 2, typeof odd === "number" ? odd : formula(odd, 0.18)],
    ["lemon juice", 150, 4, cost(150, 4)],
    ["dextrose monohydrate", 40, 5, cost(40, 5)],
    ["Total", formula("SUM(Mix[Weight (g)])", 970), null, formula("SUM(Mix[Cost (€)])", 1.58)],
  ];
  return bookOf({ Sheet1: rows }, { Sheet1: { tables: [table] } });
}

const only = (rule: string, workbook: Parameters<typeof auditWorkbook>[0]) =>
  auditWorkbook(workbook).findings.filter((finding) => finding.rule === rule);

test("a formula unlike its table's column is told and mended in the words of the table", () => {
  const odd = "[@[Weight (g)]]/1000";
  const [found] = only("inconsistent-formula", costing(odd));
  expect(found?.message).toBe(`D3 has the formula =${odd}, unlike the cells around it (=${COST}).`);
  expect(found?.edits).toEqual([{ sheet: "Sheet1", cell: "D3", from: `=${odd}`, to: `=${COST}` }]);
});

test("a number typed over a table's formula is mended in the words of the table", () => {
  const [found] = only("formula-overwritten", costing(0.36));
  expect(found?.edits).toEqual([{ sheet: "Sheet1", cell: "D3", from: 0.36, to: `=${COST}` }]);
});

test("a sum over a named range that leaves a line out is told", () => {
  const names: DefinedName[] = [{ name: "weights", refersTo: "Sheet1!$B$2:$B$4", sheet: null }];
  const rows: Rows = [
    ["Ingredient", "Weight (g)"],
    ["water", 600],
    ["sugar", 180],
    ["lemon juice", 150],
    ["dextrose monohydrate", 40],
    ["Total", formula("SUM(weights)", 930)],
  ];
  const [found] = only("total-incomplete", bookOf({ Sheet1: rows }, {}, { names }));
  expect(found).toMatchObject({ cell: "B6", effect: { from: 930, to: 970 } });
  expect(found?.message).toContain("B5");
});

test("names and columns of tables are what formulas read: a mix is found through them", () => {
  const cells: Rows = [
    ["what goes in", null, null],
    ["Ingredient", "Weight (g)", null],
    ["water", 600, null],
    ["sugar", 180, null],
    ["", null, null],
    [
      "It begins to freeze at (°C)",
      formula("RIME.FREEZINGPOINT(Mix[Ingredient],Mix[Weight (g)])", -1.2),
    ],
  ];
  const mix = { ...table, range: { top: 1, left: 0, bottom: 3, right: 1 }, hasTotals: false };
  const tables = [{ ...mix, columns: ["Ingredient", "Weight (g)"] }];
  const found = only("result-differs", bookOf({ Sheet1: cells }, { Sheet1: { tables } }));
  expect(found).toMatchObject([{ cell: "B6", effect: { from: -1.2 } }]);
});
