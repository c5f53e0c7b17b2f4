import { cellName } from "../../workbook/address";
import { cellEdit } from "../cellEdit";
import { comparedReferences } from "../formulas/comparedReferences";
import { patternAt, type FilledLine } from "../formulas/filledLines";
import { filledColumns } from "../formulas/filledRuns";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { readsTheSame } from "../formulas/readsTheSame";
import type { Rule } from "../rule";

const identity = { id: "inconsistent-formula", severity: "warning" } as const;

function findIn(line: FilledLine): Finding[] {
  const { sheet, strangers } = line;
  return strangers.flatMap((place) => {
    const formula = sheet.cellAt(place.row, place.column)?.formula;
    const expected = patternAt(line, place);
    if (formula === undefined || comparedReferences(formula, expected).kind === "fixing") return [];
    if (readsTheSame(sheet, formula, expected)) return [];
    return findingAt(identity, sheet, place, {
      message: `${cellName(place.row, place.column)} has the formula =${formula.slice(0, 80)}, unlike the cells around it (=${expected.slice(0, 80)}).`,
      effect: null,
      fix: `Enter =${expected}, if the difference is not meant.`,
      edits: cellEdit(sheet, place, `=${expected}`),
    });
  });
}

export const inconsistentFormula: Rule = {
  ...identity,
  title: "One formula is unlike the others of its column",
  find: (context) => filledColumns(context).flatMap(findIn),
};
