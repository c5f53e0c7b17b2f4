import { cellName } from "../../workbook/address";
import type { WorkbookSheet } from "../../workbook/model";
import { calledOutside, type FormulaCell } from "../calledOutside";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { textAt } from "../recipes/cells";
import { sheetTexts } from "../recipes/sheetTexts";
import type { Rule } from "../rule";

const identity = { id: "formula-reaches-out", severity: "error" } as const;

/** Formulas that fetch or start something outside: seen in pasted data, never needed in a recipe. */
const REACHES_OUT: readonly (readonly [RegExp, string])[] = [
  [/\bWEBSERVICE\s*\(/i, "fetches a page from the internet"],
  [/\b(cmd|powershell|msexcel|rundll32|mshta)\s*\|/i, "starts a program"],
  [/\bHYPERLINK\s*\([^)]*https?:[^)]*&/i, "puts the contents of cells into a web address"],
];

/** Formulas, and texts that would run as one when they are pasted or imported again. */
function candidates(sheet: WorkbookSheet): FormulaCell[] {
  const texts = [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((column) => {
      const formula = textAt(sheet, row, column);
      return /^[=+@-]/.test(formula) ? { row, column, formula } : [];
    }),
  );
  return [...calledOutside(sheet), ...texts];
}

export const reachesOut: Rule = {
  ...identity,
  title: "A formula fetches or starts something outside the workbook",
  find: ({ workbook }) =>
    workbook.sheets.flatMap((sheet) =>
      candidates(sheet).flatMap(({ row, column, formula }): Finding[] => {
        const match = REACHES_OUT.find(([pattern]) => pattern.test(formula));
        if (match === undefined) return [];
        const evidence = {
          message: `${cellName(row, column)} ${match[1]}: ${formula.slice(0, 60)}`,
          effect: null,
          fix: "Delete it unless you put it there yourself.",
        };
        return [findingAt(identity, sheet, { row, column }, evidence)];
      }),
    ),
};
