import type { AuditContext } from "../context";
import { isMisread } from "../amounts/isMisread";
import { recomputed } from "../answers/recomputed";
import { isLedger } from "../recipes/isLedger";
import { fahrenheitToC } from "../answers/resultLabel";
import type { StatedResult } from "../answers/statedResults";

/** A point in °F agrees with the recipe's about as well as one in °C would. */
const CLOSE_K = 0.25;
const RELATIVE = 0.1;
/** A brine at its strongest freezes at about −21 °C, a mix to be eaten not below −15. */
const [COLDEST_F, COLDEST_IN_LEDGER_F] = [-6, 5];

/** What freezes below 0 °F is a brine or a spirit, not a mix of many things. */
const MOST_IN_BRINE = 3;

/** Whether a freezing point that is said to be in °C is the recipe's in °F. */
export function isPointInFahrenheit(context: AuditContext, result: StatedResult): boolean {
  const { role, unit, value, block } = result;
  // Computed one by one, the points in °C of a ledger would cost seconds.
  const coldest = isLedger(block) ? COLDEST_IN_LEDGER_F : COLDEST_F;
  if (role !== "freezing point" || unit !== "°C" || value < coldest || value > 32) return false;
  const ours = recomputed(context, result);
  if (ours === null || (value < 0 && block.names.length > MOST_IN_BRINE)) return false;
  const off = Math.abs(fahrenheitToC(value) - ours);
  // A depression in K, or a point that is only a little wrong, may come as near.
  const isNearest = off < Math.abs(value + ours) && off < Math.abs(value - ours);
  const isClose = off <= Math.max(CLOSE_K, RELATIVE * Math.abs(ours));
  return isNearest && isClose && !isMisread(block, result.recipe);
}
