import type { Place, Recipe, RecipeBlock } from "../recipeBlock";

/** Where the totals of one recipe stand: in the list's own lines of totals, and apart from it. */
export function totalPlaces(block: RecipeBlock, { line }: Recipe): readonly Place[] {
  const { layout, totals, totalsApart = [] } = block;
  const listed = totals.map((at) =>
    layout === "down" ? { row: at, column: line } : { row: line, column: at },
  );
  return [...listed, ...totalsApart.filter((place) => place.line === line)];
}
