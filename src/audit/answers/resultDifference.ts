import { freezingPointUncertaintyK } from "./answers";
import type { AuditContext } from "../context";
import { fahrenheitToC } from "./resultLabel";
import { isLedger } from "../recipes/isLedger";
import type { StatedResult } from "./statedResults";
import { statedTolerance } from "./statedTolerance";

/** Below these differences two honest sheets may disagree: rounding, other constants, other curves. */
const LEAST: Readonly<Record<StatedResult["role"], number>> = {
  "freezing point": 0.1,
  depression: 0.1,
  molality: 0.02,
  "ice fraction": 0.03,
};
const RELATIVE = 0.05;
/** The classroom law is a warning only where it is off by more than this. */
export const IDEAL_RELATIVE = 0.1;

/** Our own freezing points are no better than this. */
const LEAST_TOLERANCE_K = 0.03;

/** A stated number in the unit in which we answer. */
export function inOurUnit({ value, unit, role }: StatedResult): number {
  if (unit === "%") return value / 100;
  if (unit !== "°F") return value;
  return role === "depression" ? (value * 5) / 9 : fahrenheitToC(value);
}

/** Whether a stated number is further off ours than rounding, or other constants, make it. */
export const isOff = (
  role: StatedResult["role"],
  stated: number,
  ours: number,
  relative = RELATIVE,
): boolean => Math.abs(stated - ours) > Math.max(LEAST[role], relative * Math.abs(ours));

/** A class's thermometer shows tenths, and one reading differs from the next. */
const OF_READING = { kelvin: 0.3, relative: 0.2 };

/** Whether a number is as near to ours as one that was read off can be. */
export const isCloseForReading = (
  role: StatedResult["role"],
  stated: number,
  ours: number,
): boolean =>
  Math.abs(stated - ours) <= OF_READING.kelvin || !isOff(role, stated, ours, OF_READING.relative);

/** A number without a known mistake behind it must be off by more than both of these. */
const UNEXPLAINED_RELATIVE = 0.08;
const UNCERTAINTIES = 2;

/** Whether a difference could be other data for the same mix: natural fruit, another table of freezing points. */
export function mayBeOtherData(
  context: AuditContext,
  result: StatedResult,
  stated: number,
  ours: number,
): boolean {
  if (result.role === "molality" || result.role === "ice fraction") return false;
  if (!isOff(result.role, stated, ours, UNEXPLAINED_RELATIVE)) return true;
  // Far off is far off: the uncertainty is asked for only where it could matter, and not for a whole column.
  const isFar = isOff(result.role, stated, ours, 4 * UNEXPLAINED_RELATIVE);
  if (isFar || isLedger(result.block)) return false;
  const mix = context.mixOf(result.block, result.recipe);
  return Math.abs(stated - ours) <= UNCERTAINTIES * freezingPointUncertaintyK(mix);
}

/** What the sheet says its law is good to, else the sheet on which the solution is worked out. */
function toleranceFor({ sheet, row, role, block }: StatedResult) {
  if (role !== "freezing point" && role !== "depression") return null;
  return statedTolerance(sheet, row) ?? statedTolerance(block.sheet, block.range.bottom);
}

/** What the sheet says its law is good to, else a tenth. */
export function isWithinTolerance(result: StatedResult, stated: number, ours: number): boolean {
  const tolerance = toleranceFor(result);
  if (tolerance === null) return !isOff(result.role, stated, ours, IDEAL_RELATIVE);
  const kelvin = "kelvin" in tolerance ? tolerance.kelvin : tolerance.fraction * Math.abs(ours);
  return Math.abs(stated - ours) <= Math.max(kelvin, LEAST_TOLERANCE_K);
}

/** Whether a number that is right enough elsewhere is further off than its own sheet promises. */
export const breaksPromise = (result: StatedResult, stated: number, ours: number): boolean =>
  toleranceFor(result) !== null && !isWithinTolerance(result, stated, ours);
