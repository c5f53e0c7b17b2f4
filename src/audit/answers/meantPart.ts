import type { AuditContext } from "../context";
import { rangesReadHere } from "../formulas/rangesReadHere";
import { contains } from "../../workbook/references";
import { holdsWords } from "../holdsWords";
import { textAt } from "../recipes/cells";
import { plainWords } from "../recipes/headings/plainWords";
import type { Recipe, RecipeBlock } from "../recipes/recipeBlock";
import { partsBeside, type Part } from "../recipes/partsBeside";
import { recomputed } from "./recomputed";
import type { RecipeInBlock } from "./recipeInBlock";
import { inOurUnit } from "./resultDifference";
import type { StatedResult } from "./statedResults";

/** Longer lists are ledgers. */
const LONGEST = 100;
/** Of one line nobody tells where it freezes. */
const FEWEST = 2;

/** What a total says beside the part that it adds up: "Summe Gruppe 1", "custard all together". */
const SUMMED =
  /(?<!\p{L})(sub-?totals?|totals?|sums?|weights?|all|together|in all|zwischensumme|teilsumme|summe|gesamt|gewicht|zusammen|insgesamt|of|the|der|die|das|für|for)(?!\p{L})|[:.,;()]/giu;

/** The parts that sums among the lines of a list add up, by the words of the sums. */
function partsSummed({ sheet, layout, names, totals }: RecipeBlock, { line }: Recipe): Part[] {
  if (layout !== "down" || names.length > LONGEST) return [];
  return totals.map((row) => {
    const read = rangesReadHere(sheet, { row, column: line });
    const label = plainWords(textAt(sheet, row, names[0]?.column ?? 0));
    return {
      words: label.replaceAll(SUMMED, " ").replaceAll(/\s+/g, " ").trim(),
      names: names.filter((name) => read.some((range) => contains(range, name.row, line))),
    };
  });
}

const partsOf = (block: RecipeBlock, recipe: Recipe): readonly Part[] =>
  [...partsBeside(block), ...partsSummed(block, recipe)].filter(
    ({ words, names }) =>
      /\p{L}{3}/u.test(words) && names.length >= FEWEST && names.length < block.names.length,
  );

const known = new WeakMap<Recipe, ReadonlyMap<string, RecipeInBlock>>();

/** The parts of a recipe that have a name, each a recipe of its own. */
function recipesOfParts(block: RecipeBlock, recipe: Recipe): ReadonlyMap<string, RecipeInBlock> {
  const before = known.get(recipe);
  if (before !== undefined) return before;
  const parts = partsOf(block, recipe).map(
    ({ words, names }) =>
      [words, { block: { ...block, names, totals: [] }, recipe: { ...recipe } }] as const,
  );
  const found = new Map(parts);
  known.set(recipe, found);
  return found;
}

/** How far a stated answer is off its recipe; without end where that gives none. */
function distance(context: AuditContext, result: StatedResult): number {
  const ours = recomputed(context, result);
  return ours === null ? Number.POSITIVE_INFINITY : Math.abs(inOurUnit(result) - ours);
}

/**
 * An answer that names a part of its list, "filling: freezing point", as one of that part, where it is nearer to what
 * that gives than to what the whole does.
 */
export function meantPart(context: AuditContext, result: StatedResult): StatedResult {
  const parts = recipesOfParts(result.block, result.recipe);
  if (parts.size === 0) return result;
  const [only, ...more] = [...parts].filter(([words]) => holdsWords(result.label, words));
  if (only === undefined || more.length > 0) return result;
  const ofPart = { ...result, ...only[1] };
  return distance(context, ofPart) < distance(context, result) ? ofPart : result;
}
