import { cellName } from "../../workbook/address";
import type { WorkbookSheet } from "../../workbook/model";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { textAt } from "../recipes/cells";
import { sheetTexts } from "../recipes/sheetTexts";
import type { Rule } from "../rule";
import { reachesOutHow } from "./reachesOut";

const identity = { id: "text-that-would-run", severity: "error" } as const;

/** Text that a spreadsheet takes for a formula when it is typed, pasted or imported again (OWASP, CSV injection). */
const WOULD_RUN = [
  /^=\s*[-+@(]*\s*([\p{L}_][\p{L}\p{N}_.]*\s*[(!]|\$?[A-Z]{1,3}\$?\d|\d|["'{])/iu,
  /^[-+@][-+@=\s(]*[\p{L}_][\p{L}\p{N}_.]*\s*\(/u,
  /^[-+@]\s*\(?\$?[A-Z]{1,3}\$?\d{1,7}\s*([-+*/^&]|$)/,
  /^[-+@=].*\|.*!/,
];

function findOn(sheet: WorkbookSheet): Finding[] {
  return [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((column): Finding[] => {
      const text = textAt(sheet, row, column);
      const first = text.charCodeAt(0); // = + - @
      if (first !== 61 && first !== 43 && first !== 45 && first !== 64) return [];
      // A formula whose answer begins with "=" is no text, and what reaches out has its own rule.
      if (sheet.cellAt(row, column)?.formula !== undefined || reachesOutHow(text) !== null)
        return [];
      if (!WOULD_RUN.some((pattern) => pattern.test(text))) return [];
      return [
        findingAt(
          identity,
          sheet,
          { row, column },
          {
            message: `${cellName(row, column)} holds the text "${text.slice(0, 60)}": it shows no result, and would run as a formula when it is pasted or imported again.`,
            effect: null,
            fix: "Type it again as a formula in a cell that is not formatted as text, or delete it.",
          },
        ),
      ];
    }),
  );
}

export const textFormula: Rule = {
  ...identity,
  title: "A text would run as a formula when it is pasted again",
  find: ({ workbook }) => workbook.sheets.flatMap(findOn),
};
