import { isWater } from "../forms/isWater";
import type { RecipeBlock } from "../recipeBlock";

/** Two recipes may well be parts of a third. */
const LEAST_RECIPES = 3;
/** A list of what all recipes need is longer than they are by so much. */
const LONGER = 1.5;
/** A name may be another one, or misspelled, in so many lines. */
const [MOST_OF_RECIPE, MOST_OF_LIST] = [0.6, 0.8];

/** Water comes from the tap. */
const namesOf = ({ names }: RecipeBlock): readonly string[] => [
  ...new Set(names.filter(({ item }) => !isWater(item)).map(({ item }) => item.toLowerCase())),
];

/**
 * Whether a list has what several others are made of, and hardly anything else: what is in store, or what it costs, is
 * no mix.
 */
export function isStock(block: RecipeBlock, all: readonly RecipeBlock[]): boolean {
  const own = new Set(namesOf(block));
  const made = all.flatMap((other) => {
    const names = other === block || other.names.length >= own.size ? [] : namesOf(other);
    const there = names.filter((name) => own.has(name));
    return there.length > 1 && there.length >= MOST_OF_RECIPE * names.length ? [there] : [];
  });
  const used = new Set(made.flat());
  const average = made.flat().length / made.length;
  return (
    made.length >= LEAST_RECIPES &&
    own.size >= LONGER * average &&
    used.size >= MOST_OF_LIST * own.size
  );
}
