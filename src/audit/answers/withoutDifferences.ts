import { referencesOf } from "../../workbook/references";
import { resultRole } from "./resultRole";
import type { StatedResult } from "./statedResults";

const keyOf = (sheet: string, row: number, column: number): string => `${sheet}!${row},${column}`;

/** "=J5-$J$4", "=ROUND(J5-A!J4,2)": one cell minus another. */
const CELL = "(?:(?:'[^']+'|[\\p{L}\\d_.]+)!)?\\$?[A-Z]{1,3}\\$?\\d{1,7}";
const DIFFERENCE = new RegExp(
  `^=?\\s*(?:(?:ROUND|ABS)\\s*\\(\\s*)*\\(?\\s*${CELL}\\s*-\\s*${CELL}(?![\\d(])`,
  "iu",
);

/**
 * The answers without those that formulas take as one answer minus another of the same kind: by how much one version
 * freezes lower than the next is no freezing point, whatever its label names.
 */
export function withoutDifferences(results: readonly StatedResult[]): readonly StatedResult[] {
  const isOne = (result: StatedResult) =>
    DIFFERENCE.test(result.sheet.cellAt(result.row, result.column)?.formula ?? "");
  if (!results.some(isOne)) return results;
  const roles = new Map(
    results.map(({ sheet, row, column, role }) => [keyOf(sheet.name, row, column), role]),
  );
  return results.filter((result) => {
    if (!isOne(result)) return true;
    const { role, label, sheet, row, column } = result;
    // "Freezing point, B after A (K)" is called a point, and as a number of kelvin taken for a depression.
    const said = resultRole(label);
    const read = referencesOf(sheet.cellAt(row, column)?.formula ?? "").map((reference) => {
      const { top, left } = reference.range;
      return roles.get(keyOf(reference.sheet ?? sheet.name, top, left));
    });
    const [one, other] = read;
    const isOfSame = read.length === 2 && one !== undefined && one === other;
    return !isOfSame || (one !== role && one !== said);
  });
}
