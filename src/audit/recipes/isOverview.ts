import type { WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import { plainWords } from "./headings/plainWords";
import type { RecipeName } from "./recipeBlock";

/** A formula that takes one cell over and does nothing with it. */
const TAKEN = /^\s*(?:'[^']+'|[\p{L}\p{N}_.]+)!\$?[A-Z]{1,3}\$?\d+\s*$/iu;

/** Whether an amount is taken from the sheet by whose name its line goes. */
function isOfSheet(sheet: WorkbookSheet, { row, item }: RecipeName, column: number): boolean {
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  const [read] = TAKEN.test(formula) ? referencesOf(formula) : [];
  const name = read?.sheet ?? null;
  return name !== null && plainWords(name) === plainWords(item);
}

/** Whether the lines of a list are other sheets, each with what comes out there, and at most a line of them all: nothing is mixed. */
export const isOverview = (
  sheet: WorkbookSheet,
  names: readonly RecipeName[],
  columns: readonly number[],
): boolean =>
  columns.some((column) => {
    const taken = names.filter((name) => isOfSheet(sheet, name, column));
    return taken.length > 1 && taken.length >= names.length - 1;
  });
