import { cellName } from "../../workbook/address";
import { formulaEdit, writtenFormula } from "../cellEdit";
import { comparedReferences } from "../formulas/comparedReferences";
import { patternAt, type FilledLine } from "../formulas/filledLines";
import { filledColumns } from "../formulas/filledRuns";
import type { AuditContext } from "../context";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { WorkbookCell, WorkbookSheet } from "../../workbook/model";
import { goesByName } from "../formulas/goesByName";
import { readsTheSame } from "../formulas/readsTheSame";
import { summaryStrangers } from "../formulas/summaryStrangers";
import type { Place } from "../recipes/recipeBlock";
import type { Rule } from "../rule";
import { toldOnce } from "../toldOnce";

const identity = { id: "inconsistent-formula", severity: "warning" } as const;

const LINK = /^(('[^']+'|[\p{L}\p{N}_.]+)!)?\$?[A-Z]{1,3}\$?\d+$/u;

/** Whether a formula only takes words from another cell: names are picked one by one, not filled down. */
const picksWords = ({ value, formula = "" }: WorkbookCell): boolean =>
  typeof value === "string" && LINK.test(formula);

function findAt(
  { workbook }: AuditContext,
  sheet: WorkbookSheet,
  place: Place,
  expected: string,
): Finding[] {
  const cell = sheet.cellAt(place.row, place.column);
  const formula = cell?.formula;
  if (cell === undefined || formula === undefined || picksWords(cell)) return [];
  if (comparedReferences(formula, expected).kind === "fixing") return [];
  if (readsTheSame(sheet, formula, expected)) return [];
  if (goesByName(workbook, sheet, place, formula, expected)) return [];
  const wanted = writtenFormula(sheet, place, expected);
  return [
    findingAt(identity, sheet, place, {
      message: `${cellName(place.row, place.column)} has the formula =${(cell.written ?? formula).slice(0, 80)}, unlike the cells around it (${wanted.slice(0, 81)}).`,
      effect: null,
      fix: `Enter ${wanted}, if the difference is not meant.`,
      edits: formulaEdit(sheet, place, expected),
    }),
  ];
}

const findIn = (context: AuditContext, line: FilledLine): Finding[] =>
  line.strangers.flatMap((place) => findAt(context, line.sheet, place, patternAt(line, place)));

export const inconsistentFormula: Rule = {
  ...identity,
  title: "One formula is unlike the others of its column",
  find: (context) =>
    toldOnce([
      ...filledColumns(context).flatMap((line) => findIn(context, line)),
      ...summaryStrangers(context.workbook).flatMap(({ sheet, place, expected }) =>
        findAt(context, sheet, place, expected),
      ),
    ]),
};
