import { addedToTotals } from "../answers/addedToTotals";
import { componentPer100, compositionGrams, numberFrom } from "../answers/answers";
import { unfitRecipes } from "../answers/unfitRecipes";
import type { AuditContext } from "../context";
import { gramsIn, type MeantMix } from "../mix";
import { hasWater, isClassBlock } from "../recipes/classSheet";
import { isShoppingList } from "./isShoppingList";
import { unitFromWord } from "../recipes/amounts/unit";
import { saysOnlyAmount } from "../recipes/headings/saysOnlyAmount";
import { isExtract } from "../recipes/names/isExtract";
import {
  amountPlace,
  type Place,
  type Recipe,
  type RecipeBlock,
  type RecipeName,
} from "../recipes/recipeBlock";

/** A recipe that is judged as a whole. */
export interface JudgedRecipe {
  readonly block: RecipeBlock;
  readonly recipe: Recipe;
  readonly mix: MeantMix;
}

/** Of a ledger the first recipes are judged. */
const MOST_RECIPES = 200;

/** g of water per 100 g from which on an ingredient brings a mix its water: fruit, milk, cream, spirits. */
const WATERY = 30;

/** Whether something in a list brings water; what does not is a list of substances, not a mix that is frozen. */
const bringsWater = ({ items, ownIngredients }: MeantMix): boolean =>
  items.some((item) => (componentPer100(item, "water", ownIngredients) ?? 0) >= WATERY);

const judged = new WeakMap<AuditContext, readonly JudgedRecipe[]>();

/** The recipes of a workbook of which nothing is left out, with water, and to which some answer fits, with what they mean. */
export function judgedRecipes(context: AuditContext): readonly JudgedRecipe[] {
  const known =
    judged.get(context) ??
    context.blocks.flatMap((block) =>
      block.recipes.slice(0, MOST_RECIPES).flatMap((recipe) => {
        // A class's list whose water stands where nobody finds it is not all of a mix.
        if (isClassBlock(block) && !hasWater(block)) return [];
        if (isExtract(block, context.blocks) || unfitRecipes(context).has(recipe)) return [];
        // A part meets the water of the others before it is frozen.
        if (addedToTotals(block).length > 0) return [];
        if (isShoppingList(context, block, recipe)) return [];
        const mix = context.mixOf(block, recipe);
        const isMix = mix.whole && mix.items.length > 1 && bringsWater(mix);
        return isMix ? [{ block, recipe, mix }] : [];
      }),
    );
  judged.set(context, known);
  return known;
}

/** g of a substance per 100 g of the water of a mix; 0 when there is none of either. */
export function per100Water(mix: MeantMix, substance: string): number {
  const parts = compositionGrams(mix);
  const [grams = 0, water = 0] = [parts.get(substance), parts.get("water")];
  return water > 0 ? (100 * grams) / water : 0;
}

const solubilities = new Map<string, number | null>();

/** g that dissolve in 100 g of water at 20 °C, or null when the catalogue has no figure. */
export function solubility20(substance: string): number | null {
  const known = solubilities.get(substance);
  if (known !== undefined) return known;
  const value = numberFrom("SOLUTE", substance, "solubility 20");
  solubilities.set(substance, value);
  return value;
}

/** Tables differ by some per cent, and scales do: a syrup of two parts of sugar to one of water stays clear. */
const CERTAINLY_MORE = 1.05;

/** Whether there is certainly more than dissolves. */
export const isMoreThan = (limit: number, there: number): boolean => there > CERTAINLY_MORE * limit;

/** The amount that brings most of a substance into a recipe. */
export function mainSource({ block, recipe, mix }: JudgedRecipe, substance: string): Place {
  const brought = (name: RecipeName) => {
    const item = mix.items[mix.names.indexOf(name)] ?? name.item;
    return gramsIn(mix, name) * (componentPer100(item, substance, mix.ownIngredients) ?? 0);
  };
  const [most] = [...mix.names].sort((one, other) => brought(other) - brought(one));
  return most === undefined ? { row: recipe.line, column: 0 } : amountPlace(block, recipe, most);
}

/** Whether a heading calls its recipe something: "weight", "g" and "Menge [g]" do not. */
function isCalled({ title }: Recipe): boolean {
  return title !== "" && unitFromWord(title) === null && !saysOnlyAmount(title);
}

/** The recipe's title in quotation marks, or what stands for one, as a sentence begins with it. */
export const titleOf = (recipe: Recipe): string =>
  isCalled(recipe) ? titleWithin(recipe) : "The recipe";

/** The same within a sentence. */
export const titleWithin = (recipe: Recipe): string =>
  isCalled(recipe) ? `"${recipe.title.slice(0, 60)}"` : "the recipe";
