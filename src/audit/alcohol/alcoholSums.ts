import type { WorkbookSheet } from "../../workbook/model";
import { contains, referencesOf } from "../../workbook/references";
import type { AuditContext } from "../context";
import type { Place } from "../recipes/recipeBlock";
import { alcoholTables, strengthTables, type AlcoholLine, type AlcoholTable } from "./alcoholTable";
import { amountIn } from "./amountSizes";
import { drinkAt } from "./drinkAt";
import { numberIn, placeIn, type LabelledLine } from "./labelledLine";
import { massPercentOf, strengthAt } from "./strengths";

/** The alcohol of several drinks, added up from strengths by volume as if they were by mass. */
export interface SumByVolume extends Place {
  readonly line: AlcoholLine;
  readonly stated: number;
  readonly right: number;
}

interface Sums {
  readonly byVolume: number;
  readonly byMass: number;
  readonly whole: number;
}

function sumsOf(
  context: AuditContext,
  strengths: LabelledLine,
  amounts: LabelledLine,
): Sums | null {
  const read = amountIn(amounts.label);
  if (read === null || read.isMl) return null;
  const sums = { byVolume: 0, byMass: 0, whole: 0 };
  for (const index of amounts.indexes) {
    const grams = (numberIn(amounts.sheet, placeIn(amounts, index)) ?? 0) * read.factor;
    const strength = strengthAt(strengths, placeIn(strengths, index));
    sums.whole += grams;
    if (strength === null) continue;
    sums.byVolume += (grams * strength.percent) / 100;
    sums.byMass +=
      (grams * massPercentOf(drinkAt(context, strengths, index), strength.percent)) / 100;
  }
  return sums.byVolume > 0 && sums.byVolume > 1.03 * sums.byMass ? sums : null;
}

/** Whether a cell's formula reads a line of strengths. */
function reads(sheet: WorkbookSheet, { row, column }: Place, strengths: LabelledLine): boolean {
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  const [first] = strengths.indexes;
  if (first === undefined || /ABVTOMASSFRACTION/i.test(formula)) return false;
  return referencesOf(formula).some(({ sheet: other, range }) => {
    const place = placeIn(strengths, first);
    return other === null && contains(range, place.row, place.column);
  });
}

function sumAt(
  context: AuditContext,
  tables: readonly AlcoholTable[],
  line: AlcoholLine,
  index: number,
): SumByVolume[] {
  const { sheet } = line;
  const place = placeIn(line, index);
  const value = sheet.cellAt(place.row, place.column)?.value;
  const unit = amountIn(line.label);
  if (typeof value !== "number" || line.says === "water") return [];
  const factor = line.says === "share" ? (value <= 1 ? 100 : 1) : (unit?.factor ?? 1);
  for (const { line: strengths, amounts } of tables) {
    if (!reads(sheet, place, strengths)) continue;
    for (const one of amounts) {
      const sums = sumsOf(context, strengths, one);
      if (sums === null) continue;
      const scale = line.says === "share" ? 100 / sums.whole : 1;
      const [taken, right] = [sums.byVolume * scale, sums.byMass * scale];
      if (Math.abs((value * factor) / taken - 1) < 0.01)
        return [{ ...place, line, stated: value * factor, right }];
    }
  }
  return [];
}

/** Every sum of a workbook over amounts times strengths by volume. */
export const alcoholSums = (context: AuditContext): SumByVolume[] =>
  context.workbook.sheets.flatMap((sheet) => {
    const tables = strengthTables(sheet);
    return tables.length === 0
      ? []
      : alcoholTables(sheet).flatMap(({ line }) =>
          line.indexes.flatMap((index) => sumAt(context, tables, line, index)),
        );
  });
