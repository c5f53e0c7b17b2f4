import { ALL_IMPLEMENTED_FUNCTIONS_SET } from "@univerjs/engine-formula";
import { worksheetFunctions } from "../worksheet/functions";
import { feeding, placeKey } from "./feeding";
import type { Workbook } from "./model";
import { partOf } from "./partOf";
import type { SheetRange } from "./precedents";
import type { Recalculation } from "./recalculation";
import { gridFunctionOf, type GridFunction } from "./univer/gridFunction";
import { openHeadlessGrid } from "./univer/headlessGrid";

function knownFunctions(functions: readonly GridFunction[]): ReadonlySet<string> {
  const known = new Set<string>(
    [...ALL_IMPLEMENTED_FUNCTIONS_SET, "SINGLE", "ANCHORARRAY", "LAMBDA", "LET"].map(String),
  );
  for (const { name } of functions) known.add(name.toUpperCase());
  return known;
}

/**
 * Calculates the formulas in the given blocks anew, and the formulas that feed them, at most 10,000; all
 * other cells are taken at their stored value. The workbook is not changed.
 */
export async function recalculate(
  workbook: Workbook,
  blocks: readonly SheetRange[],
  functions: readonly GridFunction[] = worksheetFunctions.map(gridFunctionOf),
): Promise<Recalculation> {
  const fed = feeding(workbook, blocks, knownFunctions(functions));
  const { calculated, leftAlone, isComplete } = fed;
  const part = partOf(workbook, fed.read);
  if (part === null) {
    const reason = "The cells that it and others read are too many to be gathered.";
    const all = [...leftAlone, ...calculated.map((cell) => ({ cell, reason }))];
    return { valueAt: () => undefined, calculated: [], leftAlone: all, isComplete: false };
  }
  const keys = calculated.map(({ sheet, row, column }) => placeKey(sheet, row, column));
  const kept = new Set(keys);
  const grid = openHeadlessGrid(part, functions, (sheet, row, column) =>
    kept.has(placeKey(sheet, row, column)),
  );
  const valueAt = await grid.recalculate();
  const fresh = new Map(
    calculated.map(({ sheet, row, column }, index) => [keys[index], valueAt(sheet, row, column)]),
  );
  grid.close();
  return {
    valueAt: (sheet, row, column) => fresh.get(placeKey(sheet, row, column)),
    calculated,
    leftAlone,
    isComplete,
  };
}
