import { callFunction } from "../../src/worksheet/callFunction";

/** An amount as a kitchen without a scale would take it. */
export interface HouseholdAmount {
  readonly count: number;
  readonly unit: "cup" | "tbsp" | "tsp";
}

const QUARTERS = 4;
const UNITS = ["cup", "tbsp", "tsp"] as const;
const NEARLY = 0.9;
const LEAST: Readonly<Record<(typeof UNITS)[number], number>> = { cup: 0.25, tbsp: 1, tsp: 0.25 };

/**
 * The largest of cup, tablespoon and teaspoon (US customary) of which it takes at least a quarter, one and a
 * quarter, to a quarter of it; null where the catalogue has no bulk density, or for less than that.
 */
export function householdAmount(name: string, grams: number): HouseholdAmount | null {
  for (const unit of UNITS) {
    const each = callFunction("GRAMS", name, 1, unit)[0]?.[0];
    if (typeof each !== "number") return null;
    const count = Math.round((grams / each) * QUARTERS) / QUARTERS;
    if (grams / each >= LEAST[unit] * NEARLY) return { count, unit };
  }
  return null;
}
