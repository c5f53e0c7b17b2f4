import type { WorksheetFunction } from "./worksheetFunction";

/** Every function of the sheet, in the order of the help index. */
export const worksheetFunctions: readonly WorksheetFunction[] = [];
