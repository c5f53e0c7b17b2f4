import { cellName } from "../../workbook/address";
import { formulaEdit, writtenFormula } from "../cellEdit";
import { comparedReferences } from "../formulas/comparedReferences";
import { patternAt, type FilledLine } from "../formulas/filledLines";
import { filledColumns } from "../formulas/filledRuns";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { goesByName } from "../formulas/goesByName";
import { readsTheSame } from "../formulas/readsTheSame";
import type { Rule } from "../rule";

const identity = { id: "inconsistent-formula", severity: "warning" } as const;

function findIn(line: FilledLine): Finding[] {
  const { sheet, strangers } = line;
  return strangers.flatMap((place) => {
    const cell = sheet.cellAt(place.row, place.column);
    const formula = cell?.formula;
    const expected = patternAt(line, place);
    if (formula === undefined || comparedReferences(formula, expected).kind === "fixing") return [];
    if (readsTheSame(sheet, formula, expected)) return [];
    if (goesByName(sheet, place, formula, expected)) return [];
    const wanted = writtenFormula(sheet, place, expected);
    return findingAt(identity, sheet, place, {
      message: `${cellName(place.row, place.column)} has the formula =${(cell?.written ?? formula).slice(0, 80)}, unlike the cells around it (${wanted.slice(0, 81)}).`,
      effect: null,
      fix: `Enter ${wanted}, if the difference is not meant.`,
      edits: formulaEdit(sheet, place, expected),
    });
  });
}

export const inconsistentFormula: Rule = {
  ...identity,
  title: "One formula is unlike the others of its column",
  find: (context) => filledColumns(context).flatMap(findIn),
};
