import { contains, referencesOf, type Reference } from "../../../workbook/references";
import { amountPlace, type RecipeBlock } from "../recipeBlock";

const LINK = /^=?\s*(?:'[^']+'!|[\p{L}\p{N}_.]+!)?\$?[A-Z]{1,3}\$?\d+\s*$/u;
/** Of a workbook with more lists than this none is compared with all the others. */
const MOST_LISTS = 300;

/** The cells that the amounts of a list are links to; null when one of them is none. */
function linksOf(block: RecipeBlock): readonly Reference[] | null {
  const [recipe] = block.recipes;
  if (recipe === undefined) return null;
  const links = block.names.map((name) => {
    const { row, column } = amountPlace(block, recipe, name);
    const formula = block.sheet.cellAt(row, column)?.formula ?? "";
    return LINK.test(formula) ? referencesOf(formula)[0] : undefined;
  });
  const found = links.filter((link) => link !== undefined);
  return found.length === links.length ? found : null;
}

function isAmong(block: RecipeBlock, all: readonly RecipeBlock[]): boolean {
  if (all.length < 2 || all.length > MOST_LISTS) return false;
  const links = linksOf(block);
  if (links === null) return false;
  const isOf = (other: RecipeBlock) => (link: Reference) =>
    (link.sheet ?? block.sheet.name) === other.sheet.name &&
    contains(other.range, link.range.top, link.range.left);
  return all.some(
    (other) => other !== block && other.names.length > links.length && links.every(isOf(other)),
  );
}

const known = new WeakMap<RecipeBlock, boolean>();

/** Whether a list only says some lines of another one again, as its sugars or its bottles: it is no mix of its own. */
export function isExtract(block: RecipeBlock, all: readonly RecipeBlock[]): boolean {
  const before = known.get(block);
  if (before !== undefined) return before;
  const isOne = isAmong(block, all);
  known.set(block, isOne);
  return isOne;
}
