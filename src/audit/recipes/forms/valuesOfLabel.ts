import type { WorkbookSheet } from "../../../workbook/model";
import { looksNumeric, textAt } from "../cells";
import { chemicalName } from "../names/chemicalName";
import type { FinderContext } from "../finderContext";
import type { Place } from "../recipeBlock";
import { formKind, type FormKind } from "./formLabels";
import { mayStandBetween } from "./mayStandBetween";

/** Values begin at most this far beside their label: a symbol or formula and a unit may stand between. */
const REACH = 3;
const MOST_VALUES = 12;

const isNumber = (sheet: WorkbookSheet, row: number, column: number): boolean => {
  const value = sheet.cellAt(row, column)?.value ?? null;
  return looksNumeric(sheet, row, column) || (typeof value === "object" && value !== null);
};

/** A name may stand where a substance is asked for, a number anywhere. */
function isValue(
  { sheet, check }: FinderContext,
  kind: FormKind | null,
  row: number,
  column: number,
) {
  if (isNumber(sheet, row, column)) return true;
  const asksForName = kind === "solute" || kind === "solvent";
  const text = textAt(sheet, row, column);
  return asksForName && text !== "" && chemicalName(text, check) !== null;
}

function valuesBeside(
  context: FinderContext,
  kind: FormKind | null,
  { row, column }: Place,
): Place[] {
  const { sheet } = context;
  const values: Place[] = [];
  for (let at = column + 1; at <= column + REACH + MOST_VALUES; at += 1) {
    if (isValue(context, kind, row, at)) {
      values.push({ row, column: at });
      continue;
    }
    const text = textAt(sheet, row, at);
    const mayFollow = at < column + REACH && mayStandBetween(text);
    if (
      values.length > 0 ||
      !mayFollow ||
      (text !== "" && formKind(text) !== null && at > column + 1)
    )
      break;
  }
  return values;
}

/** One value below its label, which is no column of them. */
function valueBelow(
  context: FinderContext,
  kind: FormKind | null,
  { row, column }: Place,
): Place[] {
  const isOne = isValue(context, kind, row + 1, column) && !isValue(context, kind, row + 2, column);
  return isOne ? [{ row: row + 1, column }] : [];
}

/** What a label stands for: the values right of it, else the one below it. */
export function valuesOfLabel(
  context: FinderContext,
  kind: FormKind | null,
  place: Place,
): { readonly values: readonly Place[]; readonly isBelow: boolean } {
  const beside = valuesBeside(context, kind, place);
  return beside.length > 0
    ? { values: beside, isBelow: false }
    : { values: valueBelow(context, kind, place), isBelow: true };
}
