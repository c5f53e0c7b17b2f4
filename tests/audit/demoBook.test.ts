import { auditContext } from "../../src/audit/context";
import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { recipes } from "../../src/bench/demo/kitchen";
import { demoBook } from "../../src/bench/demo/demoBook";
import type { Workbook } from "../../src/workbook/model";
import { sheetFromRows } from "../../src/workbook/sheetFromRows";
import { gridFunctionOf } from "../../src/workbook/univer/gridFunction";
import { openHeadlessGrid } from "../../src/workbook/univer/headlessGrid";
import { worksheetFunctions } from "../../src/worksheet/functions";

/** The demo as written: formulas without results. */
const written = (): Workbook => ({
  sheets: demoBook.sheets.map(({ name, rows, tables }) => {
    const cells = rows.map((row) =>
      row.map((cell) => {
        const format = cell?.look?.numberFormat;
        return cell && { ...cell, ...(format !== undefined && { format }) };
      }),
    );
    return sheetFromRows(name, cells, { tables });
  }),
  names: demoBook.names,
  calculation: "automatic",
  externalLinks: [],
});

/** The demo as the grid shows it: every formula with its result, spilled ones too. */
async function calculated(): Promise<Workbook> {
  const book = written();
  const grid = openHeadlessGrid(book, worksheetFunctions.map(gridFunctionOf), () => true);
  const valueAt = await grid.recalculate();
  const sheets = book.sheets.map((sheet, index) => {
    const rows = Array.from({ length: sheet.rowCount + 20 }, (_, row) =>
      Array.from({ length: sheet.columnCount }, (_unused, column) => {
        const cell = sheet.cellAt(row, column);
        const value = valueAt(index, row, column);
        return cell === undefined && value === null ? undefined : { ...cell, value };
      }),
    );
    return sheetFromRows(sheet.name, rows, { tables: sheet.tables });
  });
  grid.close();
  return { ...book, sheets };
}

/** One recipe of the demo is there to miss its target, so that the pane has something to find. */
const MEANT_TO_MISS = "Last summer's lemon ice";

const mattering = (workbook: Workbook) =>
  auditWorkbook(workbook).findings.filter(
    ({ severity, rule, message }) =>
      severity !== "note" && !(rule === "misses-its-target" && message.includes(MEANT_TO_MISS)),
  );

describe("The bench's own recipe book has no errors and no warnings but the one it shows", () => {
  test("as it is written, and its recipes are found", () => {
    expect(mattering(written())).toEqual([]);
    const { recipes: found } = auditWorkbook(written());
    expect(found.map(({ sheet }) => sheet)).toEqual(["Recipes", "Apricot bars"]);
  });
  test("as the grid calculates it, and its results are compared", async () => {
    const workbook = await calculated();
    expect(workbook.sheets[0]?.cellAt(4, 1)?.value).toEqual(expect.any(Number));
    expect(mattering(workbook)).toEqual([]);
    const { results } = auditContext(workbook);
    const ofSheet = (name: string) => results.filter(({ sheet }) => sheet.name === name);
    // A freezing point and an ice share of each recipe; a freezing point and two shares of the bars.
    expect(ofSheet("Recipes")).toHaveLength(2 * recipes.length);
    expect(ofSheet("Apricot bars").map(({ role }) => role)).toEqual([
      "freezing point",
      "ice fraction",
      "ice fraction",
    ]);
  });
});
