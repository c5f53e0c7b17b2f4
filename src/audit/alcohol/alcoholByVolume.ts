import type { AuditContext } from "../context";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import type { Place } from "../recipes/recipeBlock";
import { unitFromHeader } from "../recipes/amounts/unit";
import { isSameValue } from "../sameValue";
import { alcoholTables, type AlcoholLine, type AlcoholTable } from "./alcoholTable";
import { amountIn, isTaken, roundingOf, sizesFor } from "./amountSizes";
import { drinkAt, type Drink } from "./drinkAt";
import { numberIn, placeIn } from "./labelledLine";
import { massPercentOf, strengthsFor } from "./strengths";

/** A number that takes a strength by volume for a share of the mass. */
export interface ByVolume extends Place {
  readonly line: AlcoholLine;
  readonly drink: Drink;
  readonly abvPercent: number;
  readonly strengthAt: Place | null;
  /** What the mass of alcohol is really, in % of the drink's mass. */
  readonly massPercent: number;
  /** Of alcohol or of water in grams, or in per cent for a share. */
  readonly stated: number;
  readonly right: number;
  /** By what the cell's number is to be multiplied to be in grams, or in per cent. */
  readonly factor: number;
  /** Set where millilitres are multiplied and the density is left out. */
  readonly mL: number | null;
}

/** Formulas count a strength by volume rightly in these ways. */
const CONVERTED = /ABVTOMASSFRACTION|0?[.,]7[89]\d*/i;
/** A value that its formula no longer gives says nothing of how it is worked out. */
function isStale(
  { workbook, recalculated }: AuditContext,
  { sheet }: AlcoholLine,
  { row, column }: Place,
): boolean {
  const fresh = recalculated?.valueAt(workbook.sheets.indexOf(sheet), row, column);
  return fresh !== undefined && !isSameValue(sheet.cellAt(row, column)?.value ?? null, fresh);
}

/** Water is told only where a formula takes it from the strength: wine holds other things, too. */
function candidatesAt(context: AuditContext, table: AlcoholTable, index: number): ByVolume[] {
  const { line, amounts } = table;
  const place = placeIn(line, index);
  const cell = line.sheet.cellAt(place.row, place.column);
  const value = cell?.value;
  if (typeof value !== "number" || CONVERTED.test(cell?.formula ?? "")) return [];
  if (line.says === "water" && cell?.formula === undefined) return [];
  if (isStale(context, line, place)) return [];
  const drink = drinkAt(context, line, index);
  const found: ByVolume[] = [];
  for (const { percent, at } of strengthsFor(table, index, drink)) {
    const massPercent = massPercentOf(drink, percent);
    const common = { ...place, line, drink, abvPercent: percent, strengthAt: at, massPercent };
    if (line.says === "share") {
      const factor = value <= 1 ? 100 : 1;
      const sizes = { taken: percent, right: massPercent, mL: null };
      const isShare = isTaken(value * factor, sizes, roundingOf(line, place) * factor);
      if (isShare)
        found.push({ ...common, stated: value * factor, right: massPercent, factor, mL: null });
      continue;
    }
    const own = amountIn(line.label);
    if (own === null || own.isMl) continue;
    const isUnsaid = unitFromHeader(line.label) === null;
    for (const amount of amounts) {
      const read = amountIn(amount.label);
      const number = numberIn(line.sheet, placeIn(amount, index));
      // Millilitres of drink make millilitres of alcohol where nothing says grams.
      if (read === null || number === null || (read.isMl && (isUnsaid || line.says === "water")))
        continue;
      const factor = isUnsaid ? read.factor : own.factor;
      const sizes = sizesFor(line.says, number * read.factor, read.isMl, percent, massPercent);
      if (isTaken(value * factor, sizes, roundingOf(line, place) * factor))
        found.push({ ...common, stated: value * factor, right: sizes.right, factor, mL: sizes.mL });
    }
  }
  return found.slice(0, 1);
}

const isTotal = ({ sheet, at, isDown }: AlcoholLine, index: number): boolean => {
  if (!isDown) return false;
  for (let column = Math.max(0, at.column - 12); column < at.column; column += 1) {
    if (headerRole(textAt(sheet, index, column)) === "total") return true;
  }
  return false;
};

/** Every alcohol of a workbook that is worked out from a strength by volume as if that were by mass. */
export function alcoholByVolume(context: AuditContext): ByVolume[] {
  const told = new Set<string>();
  return context.workbook.sheets.flatMap((sheet) =>
    alcoholTables(sheet).flatMap((table) =>
      table.line.indexes
        .filter((index) => !isTotal(table.line, index))
        .flatMap((index) => candidatesAt(context, table, index))
        .filter(({ row, column }) => {
          const key = `${sheet.name}!${row},${column}`;
          const isNew = !told.has(key);
          told.add(key);
          return isNew;
        }),
    ),
  );
}
