import { NAMESPACE } from "../../../worksheet/namespace";
import { isUnit } from "../../answers/isUnit";
import { looksNumeric, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import type { Place } from "../recipeBlock";
import type { SheetTexts } from "../sheetTexts";
import { isMass, unitFromHeader, unitFromWord, type AmountUnit } from "../amounts/unit";
import { asksForSolute } from "./asksForSolute";
import { headerRole } from "../headings/headerRole";
import { eachValueOnce } from "./eachValueOnce";
import { formKind, type FormKind } from "./formLabels";
import { headedColumns } from "./headedColumns";
import { isWater } from "./isWater";
import { itemInLabel } from "./itemInLabel";
import { kindsByFormula } from "./kindsByFormula";
import { isLetters } from "./isLetters";
import { isPerWater } from "./isOfStrength";
import { keyOf, type ClassRole } from "./rolesByFormula";
import { valuesOfLabel } from "./valuesOfLabel";

/** A label with what stands beside or below it; several values are those of several solutions. */
export interface LabelledPair extends Place {
  readonly label: string;
  readonly kind: FormKind;
  readonly values: readonly Place[];
  /** True when the value stands below its label. */
  readonly isBelow: boolean;
  readonly unit: AmountUnit | null;
  /** What the values are in the calculation, by their words or by what the formulas do with them. */
  readonly role: ClassRole | null;
}

const A_WORD = /\p{L}{4}/u;

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
export type UnsaidPair = Omit<LabelledPair, "kind" | "role"> & { readonly kind: FormKind | null };

/** The letters of the quantity that the words right of a label name, as in "M | Total mass"; null where they are none. */
function wordsOfLetters({ sheet }: FinderContext, { row, column }: Place, label: string) {
  const beside = textAt(sheet, row, column + 1);
  const isNamed = isLetters(label) && A_WORD.test(beside) && unitFromWord(beside) === null;
  return isNamed ? beside : null;
}

/** A unit behind a number is that one's, whatever stands beyond: "of that | 107 | g |  | of that | 2 | g". */
const isOfNumberBefore = ({ sheet }: FinderContext, { row, column }: Place, label: string) =>
  isUnit(label) && looksNumeric(sheet, row, column - 1) && !looksNumeric(sheet, row, column + 1);

function pairAt(context: FinderContext, place: Place): UnsaidPair | null {
  const label = textAt(context.sheet, place.row, place.column);
  if (isOfNumberBefore(context, place, label)) return null;
  const words = wordsOfLetters(context, place, label);
  if (words !== null && (headerRole(words) ?? formKind(words)) !== null) return null;
  const said = formKind(label) ?? (asksForSolute(context, place) ? "solute" : null);
  const item = itemInLabel(label, context);
  const isNamed = item !== null;
  const kind = said ?? (isNamed ? "mass" : null);
  const { values, isBelow } = valuesOfLabel(context, kind, place);
  if (values.length === 0) return null;
  const unit = unitOf(context, label, place, values);
  const legend = kind === null && !isBelow ? legendOf(context, label, values) : null;
  if (legend !== null)
    return { ...place, label: legend, values, isBelow, unit, kind: formKind(legend) };
  // A bare name beside numbers is a line of a list.
  if (said === null && kind !== null && unit === null) return null;
  // What the words do not tell the letters may: then they stand for them.
  const isForWords = words !== null && said !== null;
  const column = isForWords ? place.column + 1 : place.column;
  const pair = { ...place, column, label, values, unit, isBelow };
  const meant = isNamed && isWeighed(context, pair, said) ? "mass" : kind;
  const isPoured = meant === "mass" && item !== null && isWater(item);
  return { ...pair, kind: isToldOfRecipe(context, pair) ? "answer" : isPoured ? "water" : meant };
}

/** What a legend says of the one value that letters stand for, behind it and its unit: "T | −0.6 | °C | Freezing point". */
function legendOf(
  { sheet }: FinderContext,
  label: string,
  values: readonly Place[],
): string | null {
  const [value, ...more] = values;
  if (value === undefined || more.length > 0 || !isLetters(label)) return null;
  const { row, column } = value;
  const beside = textAt(sheet, row, column + 1);
  const legend = isUnit(beside) ? textAt(sheet, row, column + 2) : beside;
  return A_WORD.test(legend) && !isUnit(legend) ? legend : null;
}

/** Whether the values are what one of our functions says of a recipe: "Mass of water" is none that was poured in. */
const isToldOfRecipe = (
  { sheet }: FinderContext,
  { values }: Pick<UnsaidPair, "values">,
): boolean =>
  values.every(({ row, column }) =>
    sheet.cellAt(row, column)?.formula?.toUpperCase().includes(`${NAMESPACE}.`),
  );

/** Whether what might be an answer was typed as a mass: "Caster sugar in it" is what went in. */
function isWeighed(
  { sheet }: FinderContext,
  { label, values, unit }: Omit<UnsaidPair, "kind">,
  said: FormKind | null,
): boolean {
  const isTyped = values.every(
    ({ row, column }) => sheet.cellAt(row, column)?.formula === undefined,
  );
  return said === "answer" && isTyped && unit !== null && isMass(unit) && !isPerWater(label);
}

/** Labelled values: one for each solution beside their label, or a column of them below it. */
export interface LabelledValues {
  readonly pairs: readonly LabelledPair[];
  readonly columns: readonly LabelledPair[];
}

/** Pairs without those that say nothing of numbers that a heading tells: "No. 1" or "Ethanol" begins a row of its table. */
function withoutLinesOf(
  { check }: FinderContext,
  headed: readonly UnsaidPair[],
  pairs: readonly UnsaidPair[],
): readonly UnsaidPair[] {
  const told = headed.flatMap(({ kind, values }) => (kind === null ? [] : values.map(keyOf)));
  const taken = new Set(told);
  return pairs.filter(
    ({ kind, label, values, isBelow }) =>
      (kind !== null && (isBelow || check(label).kind === "unknown")) ||
      !values.some((value) => taken.has(keyOf(value))),
  );
}

/** The labelled values of a sheet that a worked example could have, row by row; a value has one label. */
export function labelledPairs(context: FinderContext, texts: SheetTexts): LabelledValues {
  const beside = [...texts.columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((column) => pairAt(context, { row, column }) ?? []),
  );
  const headed = headedColumns(context.sheet, texts);
  const all = kindsByFormula(context, [...withoutLinesOf(context, headed, beside), ...headed]);
  const isColumn = ({ values, isBelow }: LabelledPair) => isBelow && values.length > 1;
  return {
    pairs: eachValueOnce(all.filter((pair) => !isColumn(pair))),
    columns: all.filter(isColumn),
  };
}
