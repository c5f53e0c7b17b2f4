import { worksheetFunctions } from "../../worksheet/functions";
import { NAMESPACE } from "../../worksheet/namespace";
import { calledFunctions } from "../../workbook/calledFunctions";
import { eachFormula } from "../../workbook/eachFormula";
import type { Workbook, WorkbookCell, WorkbookSheet } from "../../workbook/model";
import type { Place } from "../recipes/recipeBlock";

let ours: ReadonlySet<string> | undefined;

function ownNames(): ReadonlySet<string> {
  ours ??= new Set(worksheetFunctions.map(({ name }) => `${NAMESPACE}.${name}`));
  return ours;
}

export const isUnknownName = (value: unknown): boolean =>
  typeof value === "object" && value !== null && "error" in value && value.error === "#NAME?";

/** Whether a cell shows #NAME? only because it was calculated by a program that has not our functions. */
export const isNotKnownThere = (cell: WorkbookCell | undefined): boolean =>
  isUnknownName(cell?.value) &&
  calledFunctions(cell?.formula ?? "").some((name) => ownNames().has(name.toUpperCase()));

/** The cells of each sheet that do, row by row; sheets without any are left out. */
export function notKnownThere({ sheets }: Workbook): ReadonlyMap<WorkbookSheet, readonly Place[]> {
  const found = new Map<WorkbookSheet, Place[]>();
  for (const sheet of sheets) {
    eachFormula(sheet, (row, column, cell) => {
      if (!isNotKnownThere(cell)) return;
      const places = found.get(sheet) ?? [];
      places.push({ row, column });
      found.set(sheet, places);
    });
  }
  return found;
}
