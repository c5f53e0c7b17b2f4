import type { WorkbookSheet } from "../../workbook/model";
import { decimalsOf } from "../decimalsOf";
import { amountText } from "../recipes/amounts/amountText";
import { sumOfRange } from "../formulas/sumOfRange";
import { amountPlace, type Place, type Recipe, type RecipeBlock } from "../recipes/recipeBlock";
import { addsList } from "../recipes/totals/addsList";
import { unitText } from "../recipes/amounts/unit";
import { areMolesOfParticles, summedLines, type SummedLine } from "./summedLines";

/** A number that belongs into a total. */
export interface Summand {
  readonly place: Place;
  readonly value: number;
  /** False for a 0 that was typed, which no total misses. */
  readonly counts: boolean;
}

/** A total with the numbers it should count. */
export interface Totalled {
  readonly sheet: WorkbookSheet;
  readonly place: Place;
  readonly stored: number;
  readonly formula: string | undefined;
  /** Null for a column beside the amounts: costs, moles. */
  readonly recipe: Recipe | null;
  /** Whether its formula shows what it should count, and a typed one only where it stands among sums. */
  readonly byFormula: boolean;
  /** Whether what is typed as the total can be more than the sum: typed costs may hold a rent, moles be multiplied. */
  readonly mayHoldMore: boolean;
  readonly unit: string;
  /** Numbers as the sheet's own SUM sees them. */
  readonly summands: readonly Summand[];
  /** Amounts typed as text, which a person counts and the sheet does not. */
  readonly textSum: number;
  /** Lines of the other totals among or after the numbers. */
  readonly otherTotals: readonly Place[];
}

const placeIn = ({ layout }: RecipeBlock, line: number, across: number): Place =>
  layout === "down" ? { row: across, column: line } : { row: line, column: across };

/** The rows of the part that a total above it adds up, down to the next total; null where it adds up others. */
function partBelow(
  { sheet, totals }: RecipeBlock,
  line: number,
  total: number,
): { readonly from: number; readonly to: number } | null {
  const cell = sheet.cellAt(total, line);
  const added = cell === undefined ? null : sumOfRange(cell);
  if (added === null || added.left !== line || added.top <= total) return null;
  const next = totals.find((other) => other > total) ?? Number.POSITIVE_INFINITY;
  return added.bottom < next ? { from: total + 1, to: next } : null;
}

/** The numbers of a line that a total in some row or column may count; in one loop, as a ledger has a hundred thousand. */
function summandsOf(
  block: RecipeBlock,
  line: number,
  recipe: Recipe | null,
  total: number,
): Pick<Totalled, "summands" | "textSum"> {
  const { sheet, layout, names } = block;
  // A total above the list counts all of it, one above each part its part.
  const countsAll = layout === "across" || names.every(({ row }) => row > total);
  const part = layout === "across" ? null : partBelow(block, line, total);
  const summands: Summand[] = [];
  let textSum = 0;
  for (const name of names) {
    if (name.amountAt !== undefined) continue;
    const place =
      recipe === null ? { row: name.row, column: line } : amountPlace(block, recipe, name);
    const isPart = part !== null && place.row >= part.from && place.row < part.to;
    if (part === null ? !countsAll && place.row >= total : !isPart) continue;
    const cell = sheet.cellAt(place.row, place.column);
    const value = cell?.value;
    if (typeof value === "number")
      summands.push({ place, value, counts: value !== 0 || cell?.formula !== undefined });
    else if (typeof value === "string") textSum += amountText(value)?.number ?? 0;
  }
  return { summands, textSum };
}

function totalledAt(
  block: RecipeBlock,
  { line, recipe, role }: SummedLine,
  total: number,
  place: Place = placeIn(block, line, total),
): Totalled | null {
  const { sheet, totals, totalsApart = [] } = block;
  const cell = sheet.cellAt(place.row, place.column);
  if (typeof cell?.value !== "number") return null;
  const { summands, textSum } = summandsOf(block, line, recipe, total);
  return {
    sheet,
    place,
    stored: cell.value,
    formula: cell.formula,
    recipe,
    byFormula: recipe === null && (cell.formula !== undefined || !areMolesOfParticles(block, line)),
    unit: recipe === null ? "" : unitText(recipe.unit),
    mayHoldMore: role !== undefined && role !== "amount" && role !== "composition",
    summands,
    textSum,
    otherTotals: [
      ...totals.map((other) => placeIn(block, line, other)),
      ...totalsApart.filter((other) => other.line === line),
    ].filter((other) => other.row !== place.row || other.column !== place.column),
  };
}

/** The columns beside the amounts that are added up in the row of a total apart from the list: shares above it. */
function sumsBeside(
  { sheet, names }: RecipeBlock,
  lines: readonly SummedLine[],
  { row }: Place,
): readonly SummedLine[] {
  const rows = names.map((name) => name.row);
  return lines.filter(({ recipe, line }) => recipe === null && addsList(sheet, row, line, rows));
}

/** The totals of a block with what they should count, one at a time: a ledger has a hundred thousand. */
export function* totalledLines(block: RecipeBlock): Generator<Totalled, undefined> {
  const lines = summedLines(block);
  for (const line of lines) {
    for (const total of block.totals) {
      const totalled = totalledAt(block, line, total);
      if (totalled !== null) yield totalled;
    }
  }
  for (const place of block.totalsApart ?? []) {
    const recipe = block.recipes.find(({ line }) => line === place.line);
    if (recipe !== undefined) {
      const line = { line: recipe.line, recipe };
      const totalled = totalledAt(block, line, Number.POSITIVE_INFINITY, place);
      if (totalled !== null) yield totalled;
    }
    for (const beside of sumsBeside(block, lines, place)) {
      const at = { row: place.row, column: beside.line };
      const totalled = totalledAt(block, beside, Number.POSITIVE_INFINITY, at);
      if (totalled !== null) yield totalled;
    }
  }
}

export const sumOf = (summands: readonly Pick<Summand, "value">[]): number =>
  summands.reduce((sum, { value }) => sum + value, 0);

/** The summands after the last other total before this one: what a subtotal counts. */
export function sinceLastTotal({ summands, otherTotals, place }: Totalled): readonly Summand[] {
  const previous = otherTotals.filter(({ row }) => row < place.row).map(({ row }) => row);
  const last = Math.max(-1, ...previous);
  return summands.filter(({ place: { row } }) => row > last);
}

/** Typed totals are rounded: they may differ from the sum by half a percent; moles, in few figures, by more. */
export function agrees({ stored, formula, recipe }: Totalled, sum: number): boolean {
  const rounding = recipe === null && formula === undefined ? 0.5 / 10 ** decimalsOf(stored) : 0;
  return Math.abs(sum - stored) <= Math.max(0.005 * Math.abs(sum), rounding) + 1e-9;
}
