import type { WorkbookSheet } from "../../../workbook/model";
import { isUnit } from "../../answers/isUnit";
import { holdsNumber, textAt } from "../cells";
import type { Place } from "../recipeBlock";
import type { SheetTexts } from "../sheetTexts";
import { isMass, massIn, unitFromHeader, unitFromWord } from "../amounts/unit";
import { formKind, type FormKind } from "./formLabels";
import type { UnsaidPair } from "./labelledPairs";

/** Rows of a ledger that are read as solutions, one by one. */
const MOST_ROWS = 300;
const LONGEST_UNIT = 10;

/** The numbers below a heading; units may stand in a row between. */
function numbersBelow(sheet: WorkbookSheet, { row, column }: Place): Place[] {
  const isUnit = textAt(sheet, row + 1, column).length <= LONGEST_UNIT;
  const first = holdsNumber(sheet, row + 1, column) || !isUnit ? row + 1 : row + 2;
  const places: Place[] = [];
  for (let at = first; at < first + MOST_ROWS && holdsNumber(sheet, at, column); at += 1)
    places.push({ row: at, column });
  return places;
}

/** "Salt (g)" above numbers is the mass of it. */
const kindOf = (label: string): FormKind | null => {
  const kind = formKind(label);
  return kind === "solute" || kind === "solvent" ? (kind === "solute" ? "mass" : "water") : kind;
};

/** "Water (g)", or its unit first: "g dissolved". */
const unitOf = (label: string) =>
  unitFromHeader(label) ?? unitFromWord(label.slice(0, label.indexOf(" ")));

/** Columns of at least two numbers below words, in rows in which several stand side by side. */
export function headedColumns(sheet: WorkbookSheet, { columnsByRow }: SheetTexts): UnsaidPair[] {
  return [...columnsByRow].flatMap(([row, columns]) => {
    const headed = columns.flatMap((column): UnsaidPair[] => {
      const label = textAt(sheet, row, column);
      // Units below the headings are read with those.
      if (isUnit(label) && textAt(sheet, row - 1, column) !== "") return [];
      const values = numbersBelow(sheet, { row, column });
      const unit = unitOf(label) ?? massIn(textAt(sheet, row + 1, column));
      const mass = unit !== null && isMass(unit) ? unit : null;
      return values.length > 1
        ? [{ row, column, label, values, isBelow: true, unit: mass, kind: kindOf(label) }]
        : [];
    });
    return headed.length > 1 && headed.some(({ kind }) => kind !== null) ? headed : [];
  });
}
