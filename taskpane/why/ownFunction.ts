import { worksheetFunctions } from "../../src/worksheet/functions";
import type { WorksheetFunction } from "../../src/worksheet/worksheetFunction";

/** One of our functions by its name without the namespace; null when there is none. */
export const ownFunction = (name: string): WorksheetFunction | null =>
  worksheetFunctions.find((each) => each.name === name.toUpperCase()) ?? null;
