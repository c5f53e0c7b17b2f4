import { freezingPoint } from "./functions/freezingPoint";
import { iceFraction } from "./functions/iceFraction";
import { molality } from "./functions/molality";
import type { WorksheetFunction } from "./worksheetFunction";

/** Every function of the sheet, in the order of the help index. */
export const worksheetFunctions: readonly WorksheetFunction[] = [
  molality,
  freezingPoint,
  iceFraction,
];
