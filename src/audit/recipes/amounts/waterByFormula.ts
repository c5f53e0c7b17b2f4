import { massIn } from "./unit";
import { textAt } from "../cells";
import { productOf } from "../forms/productOf";
import { addsList } from "../totals/addsList";
import type { Place, RecipeBlock, RecipeName } from "../recipeBlock";

/** What is worked out from all lines of a list stands at most so many rows below it. */
const ROWS_BELOW = 8;
/** Grams of water divided by 1000, or what is divided by them multiplied. */
const FROM_GRAMS = /[/*]\s*1000(?!\d)/;

/** The cell by which a formula divides the moles of a list, and whether it holds grams. */
function dividedBy(
  { sheet, range, roles, names }: RecipeBlock,
  { row, column }: Place,
): { readonly at: Place; readonly inGrams: boolean } | null {
  const formula = sheet.cellAt(row, column)?.formula;
  if (formula?.includes("/") !== true) return null;
  const { above = [], below = [] } = productOf(formula) ?? {};
  const lines = names.map((name) => name.row);
  const isOfLines = (place: Place) =>
    lines.includes(place.row) || addsList(sheet, place.row, place.column, lines);
  const isOfMoles = above.some((place) => roles.get(place.column) === "moles" && isOfLines(place));
  const [at, ...more] = below;
  if (!isOfMoles || at === undefined || more.length > 0) return null;
  const isOutside = at.row < range.top || at.row > range.bottom;
  const cell = sheet.cellAt(at.row, at.column);
  const isTyped = typeof cell?.value === "number" && cell.formula === undefined;
  return isOutside && isTyped ? { at, inGrams: FROM_GRAMS.test(formula) } : null;
}

/** The words nearest to the left of a number, or right above it. */
function labelOf({ sheet }: RecipeBlock, { row, column }: Place): Place {
  const left = Array.from({ length: column }, (_, at) => column - 1 - at).find(
    (at) => textAt(sheet, row, at) !== "",
  );
  return left === undefined ? { row: row - 1, column } : { row, column: left };
}

/** The water of a list of solutes, whatever it is called: a formula below divides all their moles by it. */
export function waterByFormula(block: RecipeBlock): RecipeName | null {
  const { range } = block;
  for (let row = range.bottom + 1; row <= range.bottom + ROWS_BELOW; row += 1)
    for (let column = range.left; column <= range.right + 1; column += 1) {
      const divided = dividedBy(block, { row, column });
      if (divided === null) continue;
      const { at, inGrams } = divided;
      const label = labelOf(block, at);
      const { sheet } = block;
      const marks = [label, { ...at, column: at.column + 1 }].map((one) =>
        massIn(textAt(sheet, one.row, one.column)),
      );
      // What its formula takes for grams is told where it does not say so itself.
      const unit = marks.find((one) => one !== null) ?? (inGrams ? undefined : "kg");
      return { ...label, item: "water", amountAt: at, ...(unit !== undefined && { unit }) };
    }
  return null;
}
