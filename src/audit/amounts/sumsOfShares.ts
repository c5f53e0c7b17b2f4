import type { WorkbookSheet } from "../../workbook/model";
import type { AuditContext } from "../context";
import { textAt } from "../recipes/cells";
import { columnSums, type ColumnSum } from "./columnSums";
import type { FilledTotal } from "./filledTotals";
import { totalElsewhere } from "./totalElsewhere";
import { sumOf, type Summand } from "./totalledLines";

const SAYS_SHARE = /%|per ?cent|prozent|\bshares?\b|anteil/i;
const [LEAST_SHARES, MOST_SHARES] = [3, 60];
const ROUNDING = 0.11;

/** The numbers typed one below the other right above a sum, down to it. */
function typedAbove(sheet: WorkbookSheet, { row, column }: ColumnSum): readonly Summand[] {
  const typed: Summand[] = [];
  for (let at = row - 1; at >= 0 && typed.length <= MOST_SHARES; at -= 1) {
    const cell = sheet.cellAt(at, column);
    if (typeof cell?.value !== "number" || cell.formula !== undefined) break;
    typed.unshift({ place: { row: at, column }, value: cell.value, counts: true });
  }
  return typed;
}

function leavingOut(sheet: WorkbookSheet, sum: ColumnSum): FilledTotal[] {
  const { row, column, range } = sum;
  const stored = sheet.cellAt(row, column)?.value;
  const shares = typedAbove(sheet, sum);
  const [first] = shares;
  if (typeof stored !== "number" || first === undefined || range.top < first.place.row) return [];
  if (shares.length < LEAST_SHARES || Math.abs(sumOf(shares) - 100) > ROUNDING) return [];
  if (!SAYS_SHARE.test(textAt(sheet, first.place.row - 1, column))) return [];
  const missing = shares.filter(({ place }) => place.row < range.top || place.row > range.bottom);
  return missing.length > 0 ? [{ total: totalElsewhere(sheet, sum, stored, shares), missing }] : [];
}

/** Sums of typed shares of anything that leave out one of them, while all of them come to 100. */
export const sumsOfShares = ({ workbook }: AuditContext): FilledTotal[] =>
  workbook.sheets.flatMap((sheet) =>
    [...columnSums(sheet).values()].flat().flatMap((sum) => leavingOut(sheet, sum)),
  );
