import { cellName } from "../../workbook/address";
import type { WorkbookSheet } from "../../workbook/model";
import { calledOutside, type FormulaCell } from "../formulas/calledOutside";
import { cellEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import type { CellEdit, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { isBlank, textAt } from "../recipes/cells";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { contains } from "../../workbook/references";
import { sheetTexts } from "../recipes/sheetTexts";
import type { Rule } from "../rule";

const identity = { id: "formula-reaches-out", severity: "error" } as const;

/** Formulas that fetch or start something outside: seen in pasted data, never needed in a recipe. */
const REACHES_OUT: readonly (readonly [RegExp, string])[] = [
  [/\b(WEBSERVICE|IMPORT(DATA|XML|HTML|FEED)|RTD)\s*\(/i, "fetches something from outside"],
  [/\b(cmd|powershell|msexcel|rundll32|mshta|wscript)\s*(\.exe)?\s*'?\s*\|/i, "starts a program"],
  [/^[=+@-]?\s*[\p{L}\d_.]+\s*\|\s*['"][^!]*['"]\s*!/iu, "starts a program"],
  [/\bDDE(AUTO)?\s*\(/i, "starts a program"],
  [/\bHYPERLINK\s*\([^)]*&/i, "puts the contents of cells into an address"],
  [/\bHYPERLINK\s*\(\s*"(file:|\\\\|ftp:)/i, "leads to a file or another machine"],
];
/** Cells so far right of a recipe are pasted with it. */
const BESIDE = 3;
const LINK = /\bHYPERLINK\s*\(/i;

/** What a formula, or a text that would run as one, does outside; null when it does nothing there. */
export function reachesOutHow(formula: string): string | null {
  const match = REACHES_OUT.find(([pattern]) => pattern.test(formula));
  if (match !== undefined) return match[1];
  return LINK.test(formula) && /^[=+@-]/.test(formula)
    ? "hides an address behind other words"
    : null;
}

/** Texts that would run as a formula when they are pasted or imported again. */
function textsOf(sheet: WorkbookSheet): FormulaCell[] {
  return [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((column) => {
      const formula = textAt(sheet, row, column);
      return /^[=+@-]/.test(formula) ? { row, column, formula } : [];
    }),
  );
}

/** Whether nothing stands above or below a cell: a column of links has a heading. */
const isAlone = (sheet: WorkbookSheet, { row, column }: FormulaCell): boolean =>
  isBlank(sheet, row - 1, column) && isBlank(sheet, row + 1, column);

/**
 * A link in a recipe's own cells, or alone at the end of one of its lines, was pasted with the data; elsewhere
 * people link to their suppliers.
 */
function isLinkInData(
  blocks: readonly RecipeBlock[],
  sheet: WorkbookSheet,
  cell: FormulaCell,
): boolean {
  if (!LINK.test(cell.formula)) return false;
  const right = isAlone(sheet, cell) ? Number.POSITIVE_INFINITY : BESIDE;
  return blocks.some(({ range }) =>
    contains({ ...range, right: range.right + right }, cell.row, cell.column),
  );
}

/** The words or the number that a formula shows, without the formula; a text that would run is left to a person. */
function keptValue(sheet: WorkbookSheet, place: FormulaCell): readonly CellEdit[] {
  const cell = sheet.cellAt(place.row, place.column);
  const value = cell?.value;
  const isPlain =
    typeof value === "number" || (typeof value === "string" && !/^[=+@-]/.test(value));
  return cell?.formula !== undefined && isPlain ? cellEdit(sheet, place, value) : [];
}

function findOn({ blocks }: AuditContext, sheet: WorkbookSheet): Finding[] {
  const here = blocks.filter((block) => block.sheet === sheet);
  return [...calledOutside(sheet), ...textsOf(sheet)].flatMap((cell): Finding[] => {
    const link = isLinkInData(here, sheet, cell) ? "hides an address behind other words" : null;
    const how = reachesOutHow(cell.formula) ?? link;
    if (how === null) return [];
    return [
      findingAt(identity, sheet, cell, {
        message: `${cellName(cell.row, cell.column)} ${how}: ${cell.formula.slice(0, 60)}`,
        effect: null,
        fix: "Delete it unless you put it there yourself.",
        edits: keptValue(sheet, cell),
      }),
    ];
  });
}

export const reachesOut: Rule = {
  ...identity,
  title: "A formula fetches or starts something outside the workbook",
  find: (context) => context.workbook.sheets.flatMap((sheet) => findOn(context, sheet)),
};
