import type { AuditContext } from "../context";
import type { StatedResult } from "./statedResults";

/** So many whole numbers are no chance. */
const LEAST = 3;
/** A number may be rounded up or down by half a degree. */
const HALF = 0.5;

interface Typed {
  count: number;
  areWhole: boolean;
}

const known = new WeakMap<AuditContext, ReadonlyMap<string, Typed>>();

const keyOf = ({ sheet, role }: StatedResult): string => `${role} ${sheet.name}`;

const isTyped = ({ sheet, row, column }: StatedResult): boolean =>
  sheet.cellAt(row, column)?.formula === undefined;

/** What is typed as answers of each kind on each sheet. */
function typedAnswers(context: AuditContext): ReadonlyMap<string, Typed> {
  const found = new Map<string, Typed>();
  for (const result of context.results.filter(isTyped)) {
    const typed = found.get(keyOf(result)) ?? { count: 0, areWhole: true };
    typed.count += 1;
    typed.areWhole &&= Number.isInteger(result.value);
    found.set(keyOf(result), typed);
  }
  return found;
}

/** Whether a typed temperature is right to the degree on a sheet that tells all of them without decimals. */
export function isInWholeDegrees(
  context: AuditContext,
  result: StatedResult,
  stated: number,
  ours: number,
): boolean {
  const isTemperature = result.role === "freezing point" || result.role === "depression";
  if (!isTemperature || !isTyped(result) || !Number.isInteger(result.value)) return false;
  const all = known.get(context) ?? typedAnswers(context);
  known.set(context, all);
  const { count, areWhole } = all.get(keyOf(result)) ?? { count: 0, areWhole: false };
  const kelvin = result.unit === "°F" ? (HALF * 5) / 9 : HALF;
  return areWhole && count >= LEAST && Math.abs(stated - ours) <= kelvin;
}
