import { callFunction } from "../../worksheet/callFunction";
import { findTarget } from "../../catalogue/findTarget";
import { iceFraction } from "../answers";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { Mix } from "../mix";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headerRole";
import type { Place, Recipe, RecipeBlock } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import type { Rule } from "../rule";

const identity = { id: "misses-its-target", severity: "error" } as const;

interface NamedTarget {
  readonly block: RecipeBlock;
  readonly recipe: Recipe;
  readonly place: Place;
  readonly target: string;
}

const isTarget = (text: string): boolean => findTarget(text) !== undefined;

/** A style named in a column beside an across block, or below or above the amounts of a down block. */
function namedIn(block: RecipeBlock): NamedTarget[] {
  const { sheet, headerRow, layout, recipes } = block;
  if (layout === "across") {
    const column = [...block.roles].find(([, role]) => role === "target")?.[0];
    if (column === undefined || headerRow === null) return [];
    return recipes.flatMap((recipe) => {
      const target = textAt(sheet, recipe.line, column);
      return isTarget(target) ? { block, recipe, place: { row: recipe.line, column }, target } : [];
    });
  }
  const [from, to] = [Math.max(0, block.range.top - 6), block.range.bottom + 40];
  const rows = [...sheetTexts(sheet).columnsByRow].filter(([row]) => row >= from && row <= to);
  return rows.flatMap(([row, columns]) => {
    const label = columns.find((column) => headerRole(textAt(sheet, row, column)) === "target");
    if (label === undefined) return [];
    return recipes.flatMap((recipe) => {
      const places = recipes.length > 1 ? [recipe.line] : [recipe.line, label + 1, label + 2];
      const column = places.find((at) => isTarget(textAt(sheet, row, at)));
      return column === undefined
        ? []
        : { block, recipe, place: { row, column }, target: textAt(sheet, row, column) };
    });
  });
}

/** How far the ice share is outside the target's band, in percent of the basis. */
function effectOf(mix: Mix, target: string): Effect | null {
  const wanted = findTarget(target);
  if (wanted === undefined) return null;
  const { temperatureC, iceFrom, iceTo, basis } = wanted;
  const ice = iceFraction(mix, temperatureC, basis);
  if (ice === null) return null;
  const bound = ice > iceTo ? iceTo : iceFrom;
  return {
    quantity: `share of the ${basis} that is ice at ${String(temperatureC).replace("-", "−")} °C`,
    from: rounded(100 * ice, 1),
    to: rounded(100 * bound, 1),
    unit: "%",
  };
}

function finding(
  context: AuditContext,
  { block, recipe, place, target }: NamedTarget,
): Finding | null {
  const mix = context.mixOf(block, recipe);
  if (!mix.complete || mix.items.length === 0) return null;
  const column = (values: readonly (string | number)[]) => values.map((value) => [value]);
  const verdict = callFunction(
    "CHECK",
    column(mix.items),
    column(mix.grams),
    target,
    mix.ownIngredients,
  )[0]?.[0];
  if (typeof verdict !== "string" || verdict.startsWith("meets")) return null;
  const title = recipe.title === "" ? "The recipe" : `"${recipe.title}"`;
  return findingAt(identity, block.sheet, place, {
    message: `${title} misses "${target}": ${verdict}.`,
    effect: effectOf(mix, target),
  });
}

export const missesTarget: Rule = {
  ...identity,
  title: "The mix misses the serving-temperature target named beside it",
  find: (context) =>
    context.blocks.flatMap((block) =>
      namedIn(block).flatMap((named) => finding(context, named) ?? []),
    ),
};
