import type { AuditContext } from "../context";
import { labelledNumbers, type LabelledNumber } from "../labels";
import { textAt } from "../recipes/cells";
import { lastInRow } from "../amounts/rowOfInputs";

/** A unit of Kf has the mole in it, however it is written: "K·kg/mol", "°C kg mol⁻¹". */
const SAYS_MOLE = /mol(?!al)/i;
/** It may stand in the label, before the number or some cells behind it, or behind those that share its label. */
const [REACH_LEFT, REACH_RIGHT] = [3, 2];

/** The typed cryoscopic constants of a workbook with recipes or solutions that have no unit in their row. */
export function bareConstants({ workbook, blocks }: AuditContext): readonly LabelledNumber[] {
  if (blocks.length === 0) return [];
  return labelledNumbers(workbook, ["cryoscopic constant"]).filter(({ sheet, row, column }) => {
    const { formula, format = "" } = sheet.cellAt(row, column) ?? {};
    const last = lastInRow(sheet, { row, column });
    const from = Math.max(0, column - REACH_LEFT);
    const words = Array.from({ length: last + REACH_RIGHT - from + 1 }, (_, at) =>
      textAt(sheet, row, from + at),
    );
    return formula === undefined && ![format, ...words].some((text) => SAYS_MOLE.test(text));
  });
}
