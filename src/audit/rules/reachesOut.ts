import { cellName } from "../../workbook/address";
import { eachCell } from "../../workbook/eachCell";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { Rule } from "../rule";

const identity = { id: "formula-reaches-out", severity: "error" } as const;

/** Formulas that fetch or start something outside: seen in pasted data, never needed in a recipe. */
const REACHES_OUT: readonly (readonly [RegExp, string])[] = [
  [/\bWEBSERVICE\s*\(/i, "fetches a page from the internet"],
  [/\b(cmd|powershell|msexcel|rundll32|mshta)\s*\|/i, "starts a program"],
  [/\bHYPERLINK\s*\([^)]*https?:[^)]*&/i, "puts the contents of cells into a web address"],
];

export const reachesOut: Rule = {
  ...identity,
  title: "A formula fetches or starts something outside the workbook",
  find: ({ workbook }) =>
    workbook.sheets.flatMap((sheet) => {
      const findings: Finding[] = [];
      eachCell(sheet, (row, column, cell) => {
        const { value } = cell;
        const formula = cell.sharedFormula ?? cell.formula;
        const text = formula ?? (typeof value === "string" && /^[=+@-]/.test(value) ? value : "");
        const match = text === "" ? undefined : REACHES_OUT.find(([pattern]) => pattern.test(text));
        if (match === undefined) return;
        findings.push(
          findingAt(
            identity,
            sheet,
            { row, column },
            {
              message: `${cellName(row, column)} ${match[1]}: ${text.slice(0, 60)}`,
              effect: null,
              fix: "Delete it unless you put it there yourself.",
            },
          ),
        );
      });
      return findings;
    }),
};
