import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { demoBook } from "../../src/bench/demo/demoBook";
import { sheetFromRows } from "../../src/workbook/sheetFromRows";

test("the bench's own recipe book has no errors and no warnings", () => {
  const sheets = demoBook.sheets.map(({ name, rows, tables }) => {
    const cells = rows.map((row) =>
      row.map(
        (cell) =>
          cell && {
            ...cell,
            ...(cell.look?.numberFormat !== undefined && { format: cell.look.numberFormat }),
          },
      ),
    );
    return sheetFromRows(name, cells, { tables });
  });
  const { findings, recipes } = auditWorkbook({
    sheets,
    names: demoBook.names,
    calculation: "automatic",
    externalLinks: [],
  });
  expect(findings.filter(({ severity }) => severity !== "note")).toEqual([]);
  expect(recipes.map(({ sheet }) => sheet)).toEqual(["Recipes", "Apricot bars"]);
});
