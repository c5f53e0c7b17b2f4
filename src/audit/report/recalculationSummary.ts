import { cellName } from "../../workbook/address";
import type { Workbook } from "../../workbook/model";
import type { Recalculation } from "../../workbook/recalculation";
import type { RecalculationSummary } from "./auditReport";

/** Different reasons told one by one; the others are counted. */
const MOST_REASONS = 3;

function reasonsIn({ leftAlone }: Recalculation, { sheets }: Workbook): string[] {
  const groups = new Map<string, { first: string; count: number }>();
  for (const { cell, reason } of leftAlone) {
    const first = `${sheets[cell.sheet]?.name ?? ""}!${cellName(cell.row, cell.column)}`;
    const group = groups.get(reason) ?? { first, count: 0 };
    groups.set(reason, { ...group, count: group.count + 1 });
  }
  const told = [...groups].slice(0, MOST_REASONS).map(([reason, { first, count }]) => {
    const others = count > 1 ? ` and ${count - 1} more` : "";
    return `${first}${others} kept the stored value: ${reason}`;
  });
  const rest = groups.size - told.length;
  return rest > 0 ? [...told, `There are ${rest} further reasons.`] : told;
}

const STORED = "Formulas were not calculated anew: their stored results were taken.";

/** Why the values of an open workbook may not be what its formulas give; null when they are. */
const LIVE: Readonly<Record<Workbook["calculation"], string | null>> = {
  automatic: null,
  manual:
    "The open workbook is set to manual calculation: its values may be older than its amounts.",
  "automatic except tables":
    "The open workbook does not calculate its data tables by itself: their values may be old.",
};

interface HowCalculated {
  readonly recalculated?: Recalculation;
  readonly isLive?: boolean;
}

/** What the report says of the second value, the recalculated one; an open workbook has it already. */
export function recalculationSummary(
  { recalculated, isLive = false }: HowCalculated,
  workbook: Workbook,
): RecalculationSummary {
  if (recalculated === undefined) {
    const reason = isLive ? LIVE[workbook.calculation] : STORED;
    return { calculated: 0, leftAlone: 0, complete: reason === null, reason };
  }
  const { calculated, leftAlone, isComplete } = recalculated;
  const reasons = reasonsIn(recalculated, workbook);
  if (!isComplete) {
    reasons.unshift(
      `More formulas feed the recipes than are calculated anew (${calculated.length} were); the others kept their stored results.`,
    );
  }
  return {
    calculated: calculated.length,
    leftAlone: leftAlone.length,
    complete: reasons.length === 0,
    reason: reasons.length === 0 ? null : reasons.join(" "),
  };
}
