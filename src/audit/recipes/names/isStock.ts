import { textAt } from "../cells";
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

/** What stands over the names and the first amounts of a list, or left of them where they run across. */
function headingOf({ sheet, layout, headerRow, range, names, recipes }: RecipeBlock): string {
  const [row, line] = [headerRow ?? -1, recipes[0]?.line ?? -1];
  const words =
    layout === "down"
      ? [textAt(sheet, row, names[0]?.column ?? -1), textAt(sheet, row, line)]
      : [textAt(sheet, row, range.left), textAt(sheet, line, range.left)];
  return words.includes("") ? "" : words.join("|").toLowerCase();
}

/** Whether a list has the headings of most others: what is written down as recipes are is one. */
function isHeadedAs(block: RecipeBlock, others: readonly RecipeBlock[]): boolean {
  const heading = headingOf(block);
  const alike = others.filter((other) => heading !== "" && headingOf(other) === heading);
  return alike.length * 2 > others.length;
}

/**
 * Whether a list has what several others are made of, and hardly anything else: what is in store, or what it costs, is
 * no mix.
 */
export function isStock(block: RecipeBlock, all: readonly RecipeBlock[]): boolean {
  const own = new Set(namesOf(block));
  const made = all.flatMap((other) => {
    const names = other === block || other.names.length >= own.size ? [] : namesOf(other);
    const there = names.filter((name) => own.has(name));
    const isMade = there.length > 1 && there.length >= MOST_OF_RECIPE * names.length;
    return isMade ? [{ other, there }] : [];
  });
  const lines = made.flatMap(({ there }) => there);
  const used = new Set(lines);
  const average = lines.length / made.length;
  return (
    made.length >= LEAST_RECIPES &&
    own.size >= LONGER * average &&
    used.size >= MOST_OF_LIST * own.size &&
    !isHeadedAs(
      block,
      made.map(({ other }) => other),
    )
  );
}
