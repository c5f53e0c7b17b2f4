import { cellName, rangeName } from "../../workbook/address";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { amountPlace, type Place, type Recipe, type RecipeBlock } from "../recipes/recipeBlock";
import { isShare, unitText } from "../recipes/unit";
import { contains, referencesOf } from "../../workbook/references";
import type { Rule } from "../rule";

const identity = { id: "total-incomplete", severity: "error" } as const;

/** Typed totals are rounded: they may differ from the sum by half a percent. */
const TOLERANCE = 0.005;
/** These leave out what a filter hides, which is what they are for. */
const COUNTS_SHOWN = /\b(SUBTOTAL|AGGREGATE)\s*\(/i;

interface Line {
  readonly place: Place;
  readonly value: number;
}

/** The amounts before a total, as the sheet's own SUM would see them: numbers only, in the sheet's unit. */
function amountsBefore(block: RecipeBlock, recipe: Recipe, total: number): Line[] {
  return block.names.flatMap((name) => {
    const place = amountPlace(block, recipe, name);
    const value = block.sheet.cellAt(place.row, place.column)?.value;
    const before = block.layout === "down" ? place.row < total : true;
    return before && typeof value === "number" ? [{ place, value }] : [];
  });
}

const sumOf = (lines: readonly Line[]) => lines.reduce((sum, { value }) => sum + value, 0);

/** The amounts that a total's formula leaves out though it reads their neighbours. */
function leftOut(formula: string | undefined, lines: readonly Line[]): readonly Line[] {
  if (formula === undefined || !/\bSUM\s*\(/i.test(formula)) return [];
  const ranges = referencesOf(formula).filter(({ sheet }) => sheet === null);
  const isRead = ({ place }: Line) =>
    ranges.some(({ range }) => contains(range, place.row, place.column));
  const missing = lines.filter((line) => !isRead(line));
  // A sum of sums, or of something else altogether, is not judged by its ranges.
  return missing.length * 2 <= lines.length ? missing : [];
}

function totalFinding(block: RecipeBlock, recipe: Recipe, total: number): Finding | null {
  const { sheet, layout } = block;
  const place =
    layout === "down" ? { row: total, column: recipe.line } : { row: recipe.line, column: total };
  const cell = sheet.cellAt(place.row, place.column);
  if (typeof cell?.value !== "number" || block.unitColumn !== null) return null;
  const previous = layout === "down" ? block.totals.filter((row) => row < total) : [];
  const lines = amountsBefore(block, recipe, total);
  const sinceLast = lines.filter(({ place: { row } }) => row > Math.max(-1, ...previous));
  const fits = (sum: number) =>
    Math.abs(sum - (cell.value as number)) <= TOLERANCE * Math.abs(sum) + 1e-9;
  const isOfShown = COUNTS_SHOWN.test(cell.formula ?? "");
  const shown = isOfShown
    ? lines.filter(({ place: { row } }) => !sheet.hiddenRows.has(row))
    : lines;
  if (lines.length < 2 || [lines, sinceLast, shown].some((some) => fits(sumOf(some)))) return null;
  const missing = leftOut(cell.formula, lines);
  const [right, unit] = [sumOf(lines), unitText(recipe.unit)];
  const where = missing.map((line) => cellName(line.place.row, line.place.column)).join(", ");
  const why = missing.length > 0 ? `it leaves out ${where}` : "it does not fit the amounts";
  return findingAt(identity, sheet, place, {
    message: `The total in ${cellName(place.row, place.column)} is ${rounded(cell.value, 3)} where the amounts add up to ${rounded(right, 3)}: ${why}.`,
    effect: {
      quantity: "total of the recipe",
      from: rounded(cell.value, 2),
      to: rounded(right, 2),
      unit,
    },
    ...(cell.formula !== undefined && { fix: `Sum ${rangeName(rangeOf(lines))}.` }),
  });
}

function rangeOf(lines: readonly Line[]) {
  const rows = lines.map(({ place }) => place.row);
  const columns = lines.map(({ place }) => place.column);
  return {
    top: Math.min(...rows),
    bottom: Math.max(...rows),
    left: Math.min(...columns),
    right: Math.max(...columns),
  };
}

/** A column of shares of the mix that has no total row and does not come to 100 %. */
function shareFinding(block: RecipeBlock, recipe: Recipe): Finding | null {
  const mixed = block.layout === "across" || block.unitColumn !== null || block.totals.length > 0;
  if (!isShare(recipe.unit) || mixed) return null;
  const lines = amountsBefore(block, recipe, Number.POSITIVE_INFINITY);
  const whole = recipe.unit === "fraction" ? 1 : 100;
  const percent = (sumOf(lines) / whole) * 100;
  // Far from 100 it is another kind of percentage, for example of the flour or of the water.
  if (lines.length < 3 || Math.abs(percent - 100) <= 0.5 || percent < 80 || percent > 125)
    return null;
  return findingAt(identity, block.sheet, rangeOf(lines), {
    message: `The shares in ${rangeName(rangeOf(lines))} add up to ${rounded(percent, 2)} %, not 100 %.`,
    effect: { quantity: "sum of the shares", from: rounded(percent, 2), to: 100, unit: "%" },
  });
}

export const total: Rule = {
  ...identity,
  title: "A total leaves rows out, or shares do not add up to 100 %",
  find: ({ blocks }) =>
    blocks.flatMap((block) =>
      block.recipes.flatMap((recipe) =>
        [
          ...block.totals.map((line) => totalFinding(block, recipe, line)),
          shareFinding(block, recipe),
        ].filter((finding) => finding !== null),
      ),
    ),
};
