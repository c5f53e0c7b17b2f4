import { parseRangeName, rangeName } from "../workbook/address";
import type { CellRange } from "../workbook/model";
import type { Finding } from "./finding";

/** A column that is wrong from top to bottom is told once, after its worst cells. */
const MOST_PER_COLUMN = 20;

const placeOf = ({ cell }: Finding): CellRange =>
  parseRangeName(cell) ?? { top: 0, left: 0, bottom: 0, right: 0 };

function rest(findings: readonly Finding[], worst: Finding): Finding {
  let range = placeOf(worst);
  for (const finding of findings) {
    const { top, left, bottom, right } = placeOf(finding);
    range = {
      top: Math.min(range.top, top),
      left: Math.min(range.left, left),
      bottom: Math.max(range.bottom, bottom),
      right: Math.max(range.right, right),
    };
  }
  const message = `${findings.length} more cells of this column have the same fault; the largest: ${worst.message}`;
  // Without the edits: they are of the one cell only.
  const { rule, severity, sheet, effect, fix } = worst;
  const cell = rangeName(range);
  return { rule, severity, sheet, cell, message, effect, ...(fix !== undefined && { fix }) };
}

/** Keeps the first findings of each rule and column, in their order, and sums the others up in one. */
export function condense(findings: readonly Finding[]): Finding[] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key = `${finding.rule}|${finding.sheet}|${placeOf(finding).left}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [finding]);
    else group.push(finding);
  }
  return [...groups.values()].flatMap((group) => {
    const more = group.slice(MOST_PER_COLUMN);
    const [worst] = more;
    return worst === undefined || more.length === 1
      ? group
      : [...group.slice(0, MOST_PER_COLUMN), rest(more, worst)];
  });
}
