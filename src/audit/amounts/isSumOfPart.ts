import { contains, referencesOf } from "../../workbook/references";
import { holdsWords } from "../holdsWords";
import { textAt } from "../recipes/cells";
import { partsBeside } from "../recipes/partsBeside";
import type { RecipeBlock } from "../recipes/recipeBlock";
import type { Totalled } from "./totalledLines";

/** Whether a sum adds up just the lines of the part of the list that its words name: "Cream" below "Cream", "Base", "Top". */
export function isSumOfPart(
  block: RecipeBlock,
  { sheet, place, formula, summands }: Totalled,
): boolean {
  if (formula === undefined || block.layout !== "down") return false;
  const label = textAt(sheet, place.row, block.names[0]?.column ?? 0);
  const read = referencesOf(formula);
  const rows = summands
    .filter(({ place: { row, column } }) =>
      read.some(({ sheet: other, range }) => other === null && contains(range, row, column)),
    )
    .map(({ place: { row } }) => row);
  return partsBeside(block).some(
    ({ words, names }) =>
      holdsWords(label, words) &&
      names.length === rows.length &&
      names.every(({ row }) => rows.includes(row)),
  );
}
