import { overlaps, referencesOf, type Reference } from "../../../workbook/references";
import { amountPlace, type RecipeBlock } from "../recipeBlock";

const LINK = /^=?\s*(?:'(?:[^']|'')+'!|[\p{L}\p{N}_.]+!)?\$?[A-Z]{1,3}\$?\d+\s*$/u;
/** Of a workbook with more lists than this none is compared with all the others. */
const MOST_LISTS = 300;

/** What is looked up by its name in another list. */
const LOOKED_UP = /\b(?:[VHX]?LOOKUP|INDEX|SUMIFS?)\s*\(/i;

interface Sources {
  /** What each amount reads. */
  readonly references: readonly (readonly Reference[])[];
  readonly areLookedUp: boolean;
}

/** What the amounts of a list are links to or are looked up in; null when one of them is neither. */
function sourcesOf(block: RecipeBlock): Sources | null {
  const [recipe] = block.recipes;
  if (recipe === undefined) return null;
  const formulas = block.names.map((name) => {
    const { row, column } = amountPlace(block, recipe, name);
    return block.sheet.cellAt(row, column)?.formula ?? "";
  });
  const isSaidAgain = (formula: string) => LINK.test(formula) || LOOKED_UP.test(formula);
  return formulas.every(isSaidAgain)
    ? {
        references: formulas.map(referencesOf),
        areLookedUp: formulas.every((formula) => LOOKED_UP.test(formula)),
      }
    : null;
}

function isAmong(block: RecipeBlock, all: readonly RecipeBlock[]): boolean {
  if (all.length < 2 || all.length > MOST_LISTS) return false;
  const sources = sourcesOf(block);
  if (sources === null) return false;
  const isIn = (other: RecipeBlock) => (references: readonly Reference[]) =>
    references.some(
      ({ sheet, range }) =>
        (sheet ?? block.sheet.name) === other.sheet.name && overlaps(other.range, range),
    );
  // All lines looked up are still a list of what is needed; all of them linked are the recipe once more.
  const least = block.names.length + (sources.areLookedUp ? 0 : 1);
  return all.some(
    (other) =>
      other !== block && other.names.length >= least && sources.references.every(isIn(other)),
  );
}

const known = new WeakMap<RecipeBlock, boolean>();

/** Whether a list only says some lines of another one again, as its sugars, its bottles or what is to be bought for it: it is no mix of its own. */
export function isExtract(block: RecipeBlock, all: readonly RecipeBlock[]): boolean {
  const before = known.get(block);
  if (before !== undefined) return before;
  const isOne = isAmong(block, all);
  known.set(block, isOne);
  return isOne;
}
