import { readFileSync } from "node:fs";
import path from "node:path";
import { xlsxToBook } from "../../src/bench/xlsx/xlsxToBook";
import { auditRecalculated } from "../../src/audit/auditRecalculated";
import { isProblem } from "../../src/foundation/problem";
import { recalculate } from "../../src/workbook/evaluate";
import type { Workbook } from "../../src/workbook/model";
import { readWorkbook } from "../../src/workbook/readWorkbook";

// A recipe of our own, made through the scripting interface of LibreOffice Calc 7.4.7 and saved there as .xlsx:
// merged title, formats, a date, names of book, sheet and constant, an array formula, a comment, a condition, an
// input rule, a chart, a hidden row, column and sheet, and a function of ours, which it does not know.
const bytes = new Uint8Array(readFileSync(path.join(__dirname, "files", "libreOfficeCalc.xlsx")));

describe("A workbook made by another spreadsheet", () => {
  let workbook: Workbook;
  beforeAll(async () => {
    const read = await readWorkbook(bytes);
    if (isProblem(read)) throw new Error(read.message);
    workbook = read;
  });
  const at = (row: number, column: number) => workbook.sheets[0]!.cellAt(row, column);

  test("keeps values, formulas and formats", () => {
    expect(at(3, 1)).toEqual({ value: 500, format: '[$-409]0.0" g"' });
    expect(at(4, 2)).toMatchObject({ formula: "B5/$B$8", format: "[$-409]0.0%" });
    expect(at(11, 1)).toEqual({ value: 45351, format: "[$-407]dd/mm/yyyy" }); // 29 February 2024
    expect(at(15, 5)).toEqual({ value: { error: "#DIV/0!" }, formula: "1/0" });
    expect(at(16, 1)?.spills).toEqual({ top: 16, left: 1, bottom: 19, right: 1 });
    expect(at(21, 1)).toEqual({ value: 2.4, formula: "'Preise 2024'!B2*2" });
  });

  test("keeps names, what is merged and what is hidden", () => {
    expect(workbook.names).toEqual([
      { name: "Mengen", refersTo: "Rezept!$B$4:$B$7", sheet: null },
      { name: "Steuer", refersTo: "0.19", sheet: null },
      { name: "Lokal", refersTo: "Rezept!$B$14", sheet: "Rezept" },
    ]);
    const [sheet] = workbook.sheets;
    expect(sheet!.merged).toEqual([{ top: 0, left: 0, bottom: 0, right: 3 }]);
    expect([[...sheet!.hiddenRows], [...sheet!.hiddenColumns]]).toEqual([[12], [5]]);
    expect(workbook.sheets.map(({ hidden }) => hidden)).toEqual([false, false, true]);
  });

  test("has a function of ours under its own name, and is told to have been calculated without it", async () => {
    expect(at(14, 1)?.formula).toBe("RIME.FREEZINGPOINT(A4:A7,B4:B7)");
    const { findings } = await auditRecalculated(workbook, recalculate);
    expect(findings.map(({ rule, cell }) => [rule, cell])).toEqual([["error-in-an-amount", "B15"]]);
    expect(findings[0]!.message).toContain("Rimeline is not installed");
  });

  test("gives what was calculated there when it is calculated anew", async () => {
    const range = { top: 0, left: 0, bottom: 21, right: 5 };
    const { calculated, valueAt } = await recalculate(workbook, [{ sheet: 0, range }]);
    const ordinary = calculated.filter(({ formula }) => !formula.startsWith("RIME."));
    expect(ordinary.length).toBeGreaterThan(12);
    for (const { sheet, row, column } of ordinary) {
      const [stored, fresh] = [at(row, column)?.value, valueAt(sheet, row, column)];
      if (typeof stored === "number") expect(fresh).toBeCloseTo(stored, 12);
      else expect(fresh).toEqual(stored);
    }
  });

  test("opens in the bench, with what is not carried over named", async () => {
    const opened = await xlsxToBook("x.xlsx", bytes);
    expect(isProblem(opened) ? opened : opened.notes).toEqual([
      "Not carried over: charts, comments, conditional formats, input rules. Your file itself is unchanged.",
    ]);
  });
});
