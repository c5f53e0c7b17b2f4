import { cellName } from "../../workbook/address";
import { formulaEdit, writtenFormula } from "../cellEdit";
import { patternAt, type FilledLine } from "../formulas/filledLines";
import { filledColumns } from "../formulas/filledRuns";
import { summaryNumbers, type SummaryNumber } from "../formulas/summaryStrangers";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { Place } from "../recipes/recipeBlock";
import { referencesOf } from "../../workbook/references";
import type { Rule } from "../rule";
import { toldOnce } from "../toldOnce";

const LEAST_ZEROS = 2;
/** "MAX(0,F9-G9)": a formula that gives a 0 where there is nothing, so that none is typed. */
const GIVES_ZERO = /\bMAX\s*\(\s*0\s*[,;]|[,;]\s*0\s*\)/i;
const identity = { id: "formula-overwritten", severity: "warning" } as const;

/** What is free, or not there, is typed as 0; not where formulas give that 0 in other lines. */
function isFilledAtZeros({ sheet, length, placeAt, pattern }: FilledLine): boolean {
  if (GIVES_ZERO.test(pattern)) return true;
  const isZero = ({ row, column }: Place) => {
    const cell = sheet.cellAt(row, column);
    return cell?.formula !== undefined && cell.value === 0;
  };
  return Array.from({ length }, (_, at) => placeAt(at)).filter(isZero).length >= LEAST_ZEROS;
}

/** Whether the formulas above and below all read a number's own cell: it is what they are worked out with. */
function isReadByAll(line: FilledLine, { row, column }: Place): boolean {
  const ends = [0, 1, line.length - 2, line.length - 1].map(line.placeAt);
  return ends
    .filter((end) => end.row !== row || end.column !== column)
    .every((end) =>
      referencesOf(patternAt(line, end)).some(
        ({ range: { top, bottom, left, right } }) =>
          top === row && bottom === row && left === column && right === column,
      ),
    );
}

function findIn(line: FilledLine): Finding[] {
  const { sheet, strangers } = line;
  return strangers.flatMap((place) => {
    const cell = sheet.cellAt(place.row, place.column);
    if (cell?.formula !== undefined || typeof cell?.value !== "number") return [];
    if (isReadByAll(line, place)) return [];
    if (cell.value === 0 && !isFilledAtZeros(line)) return [];
    const formula = patternAt(line, place);
    return findingAt(identity, sheet, place, {
      message: `${cellName(place.row, place.column)} is the number ${cell.value} among formulas: it does not follow when the recipe changes.`,
      effect: null,
      fix: `Enter ${writtenFormula(sheet, place, formula)}, as in the cells around it, if the number is not meant.`,
      edits: formulaEdit(sheet, place, formula),
    });
  });
}

/** What belongs there reads a sheet that the others do not tell. */
const amongSummary = (numbers: readonly SummaryNumber[]): Finding[] =>
  numbers.map(({ sheet, row, column, value }) => {
    const place = { row, column };
    return findingAt(identity, sheet, place, {
      message: `${cellName(row, column)} is the number ${value} among formulas: it does not follow when the recipe changes.`,
      effect: null,
      fix: "Enter a formula that reads its own sheet, as those around it read theirs, if the number is not meant.",
    });
  });

export const formulaOverwritten: Rule = {
  ...identity,
  title: "A number stands where the cells around it are formulas",
  find: (context) =>
    toldOnce([
      ...filledColumns(context).flatMap(findIn),
      ...amongSummary(summaryNumbers(context.workbook)),
    ]),
};
