import { isListOfDrinks } from "../alcohol/isListOfDrinks";
import { distance } from "fastest-levenshtein";
import { findItem } from "../../catalogue/findItem";
import { cellEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { lostByName } from "../amounts/lostByName";
import { amountOf } from "../recipes/amounts/amountOf";
import { textAt } from "../recipes/cells";
import { foldedName } from "../recipes/names/foldedName";
import { isNoFood } from "../recipes/names/isNoFood";
import { plainWords } from "../recipes/headings/plainWords";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import { withoutExtracts } from "../recipes/names/withoutExtracts";
import type { Rule } from "../rule";

const identity = { id: "unknown-ingredient", severity: "error" } as const;

/** Two letters that changed places are two changed letters. */
const MOST_SLIPS = 2;

/** Share of the recipe's mass that has this name, at its largest over the block's recipes, in %. */
function largestShare(block: RecipeBlock, name: RecipeName): number {
  const shares = block.recipes.slice(0, 200).map((recipe) => {
    const grams = block.names.map((one) => amountOf(block, recipe, one).grams ?? 0);
    const total = grams.reduce((sum, value) => sum + Math.max(0, value), 0);
    return total > 0 ? ((amountOf(block, recipe, name).grams ?? 0) / total) * 100 : 0;
  });
  return Math.max(0, ...shares);
}

/** Titles of other recipes in the workbook: a base mix used as an ingredient is no misspelling. */
function subRecipes({ workbook, blocks }: AuditContext): ReadonlySet<string> {
  const titles = new Set(workbook.sheets.map(({ name }) => plainWords(name)));
  for (const { sheet, range, recipes, headerRow } of blocks) {
    for (const { title } of recipes.slice(0, 1000)) titles.add(plainWords(title));
    // Above one of the recipes of a long list stands another one.
    if (headerRow !== null && headerRow < range.top) continue;
    for (let row = Math.max(0, range.top - 3); row < range.top; row += 1) {
      for (let column = range.left; column <= range.right; column += 1) {
        titles.add(plainWords(textAt(sheet, row, column)));
      }
    }
  }
  return titles;
}

/** The one name that is a slip or two of the fingers away; null when there is none, or two. */
function oneSlipAway(item: string, nearest: readonly string[]): string | null {
  const near = nearest.filter(
    (name) => distance(plainWords(item), plainWords(name)) <= MOST_SLIPS && name.length > 4,
  );
  return near.length === 1 ? (near[0] ?? null) : null;
}

function finding(
  context: AuditContext,
  titles: ReadonlySet<string>,
  block: RecipeBlock,
  name: RecipeName,
): Finding | null {
  const knowledge = context.checkFor(block)(name.item);
  if (knowledge.kind !== "unknown" || isNoFood(name.item)) return null;
  if (titles.has(plainWords(name.item))) return null;
  // Letters that only look right have a rule of their own, which knows the name that is meant.
  if (context.checkFor(block)(foldedName(name.item)).kind !== "unknown") return null;
  const share = largestShare(block, name);
  const lost = share === 0 ? lostByName(context, block, name) : null;
  if (share === 0 && lost === null) return null;
  const match = findItem(name.item);
  const nearest = match.kind === "unknown" ? match.nearest : [];
  const hint =
    nearest.length === 0
      ? "no name resembles it"
      : `the nearest name is "${nearest.join('" or "')}"`;
  const slip = oneSlipAway(name.item, nearest);
  const effect: Effect = lost ?? {
    quantity: "mass not accounted for",
    from: rounded(share, 1),
    to: 0,
    unit: "% of the mix",
  };
  return findingAt(identity, block.sheet, name, {
    message: `"${name.item}" is neither in the catalogue nor an own ingredient; ${hint}.`,
    effect,
    fix: "Use a name of the catalogue, or add it to the own-ingredients range (`same as`, or its composition).",
    edits: slip === null ? [] : cellEdit(block.sheet, name, slip),
  });
}

export const unknownIngredient: Rule = {
  ...identity,
  title: "An ingredient is not known",
  find: (context) => {
    const titles = subRecipes(context);
    // What bottles are, is said beside them by their strength; nothing is worked out from their names.
    const mixes = withoutExtracts(context.blocks).filter((block) => !isListOfDrinks(block));
    return mixes.flatMap((block) =>
      block.names.flatMap((name) => finding(context, titles, block, name) ?? []),
    );
  },
};
