import { findTarget } from "../catalogue/findTarget";
import { normalName } from "../catalogue/normalName";
import type { Matrix } from "../foundation/cell";
import type { AuditContext } from "./context";
import { textAt } from "./recipes/cells";
import { headerRole } from "./recipes/headerRole";
import type { Place, Recipe, RecipeBlock } from "./recipes/recipeBlock";
import { sheetTexts } from "./recipes/sheetTexts";
import type { WantedIce } from "./wantedIce";

interface Asked {
  readonly wanted: WantedIce;
  /** What RIME.CHECK is asked with: the name, or the workbook's own table of it. */
  readonly asked: string | Matrix;
}

/** A serving target that stands beside a recipe. */
export interface NamedTarget extends Asked {
  readonly block: RecipeBlock;
  readonly recipe: Recipe;
  readonly place: Place;
  /** As written on the sheet. */
  readonly name: string;
}

/** A target by the name in a cell: of the catalogue, as in the pane, else of the workbook's own ones. */
function askedFor(name: string, { ownTargets }: AuditContext): Asked | null {
  const known = name === "" ? undefined : findTarget(name);
  if (known !== undefined) return { wanted: known, asked: name };
  const own = ownTargets.get(normalName(name));
  return own === undefined ? null : { wanted: own, asked: own.table };
}

function targetAt(context: AuditContext, block: RecipeBlock, recipe: Recipe, place: Place) {
  const name = textAt(block.sheet, place.row, place.column);
  const asked = askedFor(name, context);
  return asked === null ? [] : [{ block, recipe, place, name, ...asked }];
}

function besideRows(context: AuditContext, block: RecipeBlock): NamedTarget[] {
  const column = [...block.roles].find(([, role]) => role === "target")?.[0];
  if (column === undefined || block.headerRow === null) return [];
  return block.recipes.flatMap((recipe) =>
    targetAt(context, block, recipe, { row: recipe.line, column }),
  );
}

/** Whether a column belongs to another list than the block's own, side by side with it. */
const isOfOther = (block: RecipeBlock, all: readonly RecipeBlock[], column: number): boolean =>
  (column < block.range.left || column > block.range.right) &&
  all.some(
    ({ sheet, layout, range }) =>
      sheet === block.sheet &&
      layout === "down" &&
      column >= range.left &&
      column <= range.right &&
      range.top <= block.range.bottom &&
      block.range.top <= range.bottom,
  );

/** How many rows lie between a row and a list: none inside it. */
const rowsAway = ({ range }: RecipeBlock, row: number): number =>
  Math.max(0, range.top - row, row - range.bottom);

/** Whether a row stands nearer to another list of the sheet, above or below. */
const isNearerToOther = (block: RecipeBlock, all: readonly RecipeBlock[], row: number): boolean =>
  all.some(
    (other) =>
      other.sheet === block.sheet &&
      other.layout === "down" &&
      rowsAway(other, row) < rowsAway(block, row),
  );

function aboveOrBelow(context: AuditContext, block: RecipeBlock): NamedTarget[] {
  const { blocks: all } = context;
  const { sheet, recipes } = block;
  const [from, to] = [Math.max(0, block.range.top - 6), block.range.bottom + 40];
  const rows = [...sheetTexts(sheet).columnsByRow].filter(
    ([row]) => row >= from && row <= to && !isNearerToOther(block, all, row),
  );
  return rows.flatMap(([row, columns]) => {
    const label = columns.find(
      (column) =>
        headerRole(textAt(sheet, row, column)) === "target" && !isOfOther(block, all, column),
    );
    if (label === undefined) return [];
    return recipes.flatMap((recipe) => {
      const places = recipes.length > 1 ? [recipe.line] : [recipe.line, label + 1, label + 2];
      const own = places.filter((column) => !isOfOther(block, all, column));
      return own.flatMap((column) => targetAt(context, block, recipe, { row, column })).slice(0, 1);
    });
  });
}

const known = new WeakMap<RecipeBlock, readonly NamedTarget[]>();

/** The styles named in a column beside an across block, or below or above the amounts of a down block. */
export function namedTargets(context: AuditContext, block: RecipeBlock): readonly NamedTarget[] {
  const find = block.layout === "across" ? besideRows : aboveOrBelow;
  const found = known.get(block) ?? find(context, block);
  known.set(block, found);
  return found;
}
