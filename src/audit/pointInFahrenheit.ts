import type { AuditContext } from "./context";
import { recomputed } from "./recomputed";
import { fahrenheitToC } from "./resultLabel";
import type { StatedResult } from "./statedResults";

/** A point in °F agrees with the recipe's about as well as one in °C would. */
const CLOSE_K = 0.25;
const RELATIVE = 0.1;

/** Whether a freezing point that is said to be in °C is the recipe's in °F. */
export function isPointInFahrenheit(context: AuditContext, result: StatedResult): boolean {
  const { role, unit, value } = result;
  if (role !== "freezing point" || unit !== "°C" || value < 5 || value > 32) return false;
  const ours = recomputed(context, result);
  return (
    ours !== null &&
    Math.abs(fahrenheitToC(value) - ours) <= Math.max(CLOSE_K, RELATIVE * Math.abs(ours))
  );
}
