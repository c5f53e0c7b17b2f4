import type { WorkbookSheet } from "../../../workbook/model";
import { looksNumeric, textAt } from "../cells";
import { chemicalName } from "../names/chemicalName";
import type { FinderContext } from "../finderContext";
import type { Place } from "../recipeBlock";
import type { SheetTexts } from "../sheetTexts";
import { isMass, unitFromHeader, unitFromWord, type AmountUnit } from "../amounts/unit";
import { asksForSolute } from "./asksForSolute";
import { formKind, type FormKind } from "./formLabels";
import { itemInLabel } from "./itemInLabel";
import { kindsByFormula } from "./kindsByFormula";
import { isPerWater } from "./isOfStrength";
import { mayStandBetween } from "./mayStandBetween";
import { keyOf } from "./rolesByFormula";

/** A label with what stands beside or below it; several values are those of several solutions. */
export interface LabelledPair extends Place {
  readonly label: string;
  readonly kind: FormKind;
  readonly values: readonly Place[];
  /** True when the value stands below its label. */
  readonly isBelow: boolean;
  readonly unit: AmountUnit | null;
}

/** Values begin at most this far beside their label: a symbol or formula and a unit may stand between. */
const REACH = 3;
const WATER = /^(water|wasser|h2o)$/i;
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

/** The unit in a label or in a cell beside its values. */
function unitOf(
  { sheet }: FinderContext,
  label: string,
  { column }: Place,
  values: readonly Place[],
) {
  const [first, last] = [values[0], values.at(-1)];
  if (first === undefined || last === undefined) return null;
  const before = first.column - 1 > column ? textAt(sheet, first.row, first.column - 1) : "";
  const after = textAt(sheet, last.row, last.column + 1);
  const words = [before, after].map((word) => word.replace(/^[([]\s*|\s*[)\]]$/g, ""));
  const units = [unitFromHeader(label), ...words.map(unitFromWord)];
  return units.find((unit) => unit !== null && unit !== "%") ?? null;
}

/** A labelled pair of which the words do not tell what it is. */
export type UnsaidPair = Omit<LabelledPair, "kind"> & { readonly kind: FormKind | null };

function pairAt(context: FinderContext, place: Place): UnsaidPair | null {
  const label = textAt(context.sheet, place.row, place.column);
  const said = formKind(label) ?? (asksForSolute(context, place) ? "solute" : null);
  const item = itemInLabel(label, context);
  const isNamed = item !== null;
  const kind = said ?? (isNamed ? "mass" : null);
  const beside = valuesBeside(context, kind, place);
  const values = beside.length > 0 ? beside : valueBelow(context, kind, place);
  if (values.length === 0) return null;
  const unit = unitOf(context, label, place, values);
  // A bare name beside numbers is a line of a list.
  if (said === null && kind !== null && unit === null) return null;
  const pair = { ...place, label, values, unit, isBelow: beside.length === 0 };
  const meant = isNamed && isWeighed(context, pair, said) ? "mass" : kind;
  const isWater = meant === "mass" && item !== null && WATER.test(item);
  return { ...pair, kind: isWater ? "water" : meant };
}

/** Whether what might be an answer was typed as a mass: "Caster sugar in it" is what went in. */
function isWeighed(
  { sheet }: FinderContext,
  { label, values, unit }: Omit<LabelledPair, "kind">,
  said: FormKind | null,
): boolean {
  const isTyped = values.every(
    ({ row, column }) => sheet.cellAt(row, column)?.formula === undefined,
  );
  return said === "answer" && isTyped && unit !== null && isMass(unit) && !isPerWater(label);
}

/** The labelled values of a sheet that a worked example could have, row by row; a value has one label. */
export function labelledPairs(
  context: FinderContext,
  { columnsByRow }: SheetTexts,
): LabelledPair[] {
  const labelled = new Set<string>();
  const isNew = ({ values }: LabelledPair) => {
    const keys = values.map(keyOf);
    const isFirst = keys.every((key) => !labelled.has(key));
    for (const key of keys) labelled.add(key);
    return isFirst;
  };
  const pairs = [...columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((column) => pairAt(context, { row, column }) ?? []),
  );
  return kindsByFormula(context.sheet, pairs).filter(isNew);
}
