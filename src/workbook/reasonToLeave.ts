import { calledFunctions } from "./calledFunctions";
import type { FormulaCell } from "./formulaIndex";
import type { Workbook } from "./model";
import { referencedSheets } from "./univer/referencedSheets";

const CHANGES_BY_ITSELF = new Set(["NOW", "TODAY", "RAND", "RANDBETWEEN", "RANDARRAY"]);
/** Their text does not name the cells they read, or they ask for the place and program they stand in. */
const READS_UNNAMED = new Set(["INDIRECT", "OFFSET", "CELL", "INFO", "GETPIVOTDATA"]);

/** Why a formula keeps its stored value; null when it can be calculated. `functions`: names in capitals. */
export function reasonToLeave(
  { formula }: FormulaCell,
  { sheets }: Workbook,
  functions: ReadonlySet<string>,
): string | null {
  const called = calledFunctions(formula).map((name) => name.toUpperCase());
  const unknown = called.find((name) => !functions.has(name));
  if (unknown !== undefined) return `The function ${unknown} is not known here.`;
  if (called.some((name) => CHANGES_BY_ITSELF.has(name)))
    return "It gives something else at every calculation.";
  const unnamed = called.find((name) => READS_UNNAMED.has(name));
  if (unnamed !== undefined) return `What ${unnamed} reads does not stand in the formula.`;
  const known = new Set(sheets.map(({ name }) => name.toLowerCase()));
  const missing = referencedSheets(formula).find((name) => !known.has(name.toLowerCase()));
  return missing === undefined ? null : `It reads "${missing}", which is not in this workbook.`;
}
