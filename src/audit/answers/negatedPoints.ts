import { parseCellName } from "../../workbook/address";
import type { StatedResult } from "./statedResults";

/** "=-I8", "=-1*I8", "=0-I8", "=$B$2-I8": what lies below 0 by another cell. */
const BELOW_BY =
  /^=?\s*\(?(?:-(?:1\s*\*\s*)?|(?:0|\$?[A-Z]{1,3}\$?\d{1,7})\s*-\s*)\(?\$?([A-Z]{1,3})\$?(\d{1,7})\)*\s*$/i;

const keyOf = ({ sheet, row, column }: Pick<StatedResult, "sheet" | "row" | "column">): string =>
  `${sheet.name}!${row},${column}`;

/** The cell by which a freezing point lies below 0; null when its formula says nothing of the kind. */
function loweredBy({ role, value, sheet, row, column }: StatedResult): string | null {
  if (role !== "freezing point" || value >= 0) return null;
  const formula = sheet.cellAt(row, column)?.formula;
  const [, letters, digits] = formula === undefined ? [] : (BELOW_BY.exec(formula) ?? []);
  const place = letters === undefined ? null : parseCellName(`${letters}${digits ?? ""}`);
  return place === null ? null : keyOf({ sheet, ...place });
}

/** What stands in one column under the same words is of one kind. */
const kindOf = ({ sheet, column, label }: StatedResult): string =>
  `${sheet.name}!${column} ${label}`;

/**
 * Answers of which another cell is the freezing point with the opposite sign are depressions, whatever their labels
 * say: "By the law" and, beside it, "Freezing point".
 */
export function withNegatedPoints(results: readonly StatedResult[]): readonly StatedResult[] {
  const lowering = new Set(results.flatMap((result) => loweredBy(result) ?? []));
  if (lowering.size === 0) return results;
  const isNegated = (result: StatedResult) =>
    result.role === "freezing point" && result.value > 0 && lowering.has(keyOf(result));
  const kinds = new Set(results.filter(isNegated).map(kindOf));
  return results.map((result) =>
    result.role === "freezing point" && result.value > 0 && kinds.has(kindOf(result))
      ? { ...result, role: "depression" }
      : result,
  );
}
