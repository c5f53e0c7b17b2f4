import { findTarget } from "../../catalogue/findTarget";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { normalName } from "../../catalogue/normalName";
import type { Matrix } from "../../foundation/cell";
import type { AuditContext } from "../context";
import { isListOfDrinks } from "../alcohol/isListOfDrinks";
import { recipeOfNeighbours } from "../answers/recipeOfNeighbours";
import { isOverBefore } from "../answers/isOverBefore";
import { isPartOfMore } from "../answers/isPartOfMore";
import { isLedger } from "../recipes/isLedger";
import { mainRecipe } from "../answers/mainRecipe";
import { looksNumeric, textAt } from "../recipes/cells";
import { isExtract } from "../recipes/names/isExtract";
import type { Place, Recipe, RecipeBlock } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { headsTarget } from "./headsTarget";
import { isNearerToOther, REACH_DOWN } from "./isNearerToOther";
import { columnsOfTargets, saysTarget } from "./saysTarget";
import { targetsElsewhere } from "./targetsElsewhere";
import type { WantedIce } from "../temperatures/wantedIce";

interface Asked {
  readonly wanted: WantedIce;
  /** What RIME.CHECK is asked with: the name, or the workbook's own table of it. */
  readonly asked: string | Matrix;
}

interface Named extends Asked {
  readonly sheet: WorkbookSheet;
  readonly place: Place;
  /** As written there. */
  readonly name: string;
}

/** A serving target that stands beside a recipe, or in a table of answers apart from it. */
export interface NamedTarget extends Named {
  readonly block: RecipeBlock;
  readonly recipe: Recipe;
}

/** A target by the name in a cell: of the catalogue, as in the pane, else of the workbook's own ones. */
function askedFor(name: string, { ownTargets }: AuditContext): Asked | null {
  const known = name === "" ? undefined : findTarget(name);
  if (known !== undefined) return { wanted: known, asked: name };
  const own = ownTargets.size === 0 ? undefined : ownTargets.get(normalName(name));
  return own === undefined ? null : { wanted: own, asked: own.table };
}

/** The target that a cell names, after a colon where there is one: "Meant as: scooped at −13". */
function namedAt(context: AuditContext, sheet: WorkbookSheet, place: Place): Named | null {
  const text = textAt(sheet, place.row, place.column);
  for (const name of new Set([text, text.slice(text.indexOf(":") + 1).trim()])) {
    const asked = askedFor(name, context);
    if (asked !== null) return { sheet, place, name, ...asked };
  }
  return null;
}

/** The targets in one column beside recipes in rows: in one that does not say so, most of its words must be targets. */
function besideRows(context: AuditContext, block: RecipeBlock): NamedTarget[] {
  for (const column of columnsOfTargets(block)) {
    const told = block.recipes.filter(({ line }) => textAt(block.sheet, line, column) !== "");
    const targets = told.flatMap((recipe) => {
      const named = namedAt(context, block.sheet, { row: recipe.line, column });
      return named === null ? [] : [{ block, recipe, ...named }];
    });
    const isSaid = headsTarget(textAt(block.sheet, block.headerRow ?? -1, column));
    if (isSaid || (targets.length > 0 && targets.length * 2 >= told.length)) return targets;
  }
  return [];
}

/** Bottles, and some lines of another list said again, are not served. */
const isMix = (block: RecipeBlock, { blocks }: AuditContext): boolean =>
  !isListOfDrinks(block) && !isExtract(block, blocks);

/** Rows above a list in which its target is looked for. */
const REACH_UP = 6;

const isNear = ({ top, bottom }: CellRange, row: number): boolean =>
  row >= top - REACH_UP && row <= bottom + REACH_DOWN;

/** Whether a place lies in the columns of a list, or beyond them where the list stands between it and another one. */
const isOnSideOf = ({ range }: RecipeBlock, from: RecipeBlock, column: number): boolean => {
  const [isRight, isLeft] = [
    column >= range.left && (column <= range.right || from.range.right < range.left),
    column <= range.right && (column >= range.left || from.range.left > range.right),
  ];
  return isRight || isLeft;
};

/** Whether a place belongs to another list than the block's own: one that stands side by side with it. */
const isOfOther = (block: RecipeBlock, all: readonly RecipeBlock[], place: Place): boolean =>
  (place.column < block.range.left || place.column > block.range.right) &&
  all.some((other) => {
    const { sheet, layout, range } = other;
    return (
      sheet === block.sheet &&
      layout === "down" &&
      isOnSideOf(other, block, place.column) &&
      !isOverBefore(other, all, place) &&
      (isNear(range, place.row) ||
        (range.top <= block.range.bottom && block.range.top <= range.bottom))
    );
  });

/** The recipe whose amounts stand in a column. */
const recipeIn = ({ layout, recipes }: RecipeBlock, column: number): Recipe | undefined =>
  layout === "down" ? recipes.find(({ line }) => line === column) : undefined;

/** Whether a name stands behind the numbers of its row, right above or below a name with its temperature: all are aims. */
const isAmongAims = (context: AuditContext, sheet: WorkbookSheet, { row, column }: Place) =>
  looksNumeric(sheet, row, column - 1) &&
  [row - 1, row + 1].some((beside) =>
    /\d/.test(namedAt(context, sheet, { row: beside, column })?.name ?? ""),
  );

/** A name with its temperature is no title, whatever the label; another name needs a label that says what it is. */
function near(context: AuditContext, block: RecipeBlock): NamedTarget[] {
  const all = context.blocks.filter((other) => isMix(other, context));
  const { sheet, range } = block;
  const recipes = all
    .filter((other) => !isLedger(other))
    .flatMap((other) => other.recipes.map((recipe) => ({ block: other, recipe })));
  const rows = [...sheetTexts(sheet).columnsByRow].filter(([row]) => isNear(range, row));
  return rows.flatMap(([row, columns]) => {
    const named = columns.flatMap((column) => namedAt(context, sheet, { row, column }) ?? []);
    // Most rows name none, and there may be a hundred thousand.
    if (named.length === 0) return [];
    const isOwnPlace = (place: Place) =>
      !isOfOther(block, all, place) && !isOverBefore(block, all, place);
    const own = columns.filter((column) => isOwnPlace({ row, column }));
    const isLabel = (column: number) => headsTarget(textAt(sheet, row, column));
    // What stands beside a target that tells its temperature is one, too, be that of another list.
    const isLabelled = own.some(isLabel) || named.some(({ name }) => /\d/.test(name));
    return named.flatMap((one): NamedTarget[] => {
      const { place } = one;
      if (!isOwnPlace(place)) return [];
      const byFormulas = recipeOfNeighbours(context.workbook, recipes, sheet, place);
      const isOwn = byFormulas ? byFormulas.block === block : !isNearerToOther(block, all, row);
      const ofAll = () => (isPartOfMore(block, all) ? null : mainRecipe(block));
      const recipe = recipeIn(block, place.column) ?? byFormulas?.recipe ?? ofAll();
      if (!isOwn || recipe === null) return [];
      const isMeant = isLabelled || /\d/.test(one.name) || saysTarget(block, place);
      const isAim = isMeant || isAmongAims(context, sheet, place);
      // In a table of targets, which says nothing of a recipe, the temperature stands beside the name.
      const isOfTable = byFormulas === null && looksNumeric(sheet, row, place.column + 1);
      return isAim && !isOfTable ? [{ block, recipe, ...one }] : [];
    });
  });
}

const elsewhere = (context: AuditContext, block: RecipeBlock): NamedTarget[] =>
  targetsElsewhere(context)
    .filter((one) => one.block === block)
    .filter(({ sheet, row }) => sheet !== block.sheet || !isNear(block.range, row))
    .flatMap(({ sheet, recipe, row, column }) => {
      const named = namedAt(context, sheet, { row, column });
      return named === null ? [] : [{ block, recipe, ...named }];
    });

const known = new WeakMap<RecipeBlock, readonly NamedTarget[]>();

/** The targets named in a column beside recipes in rows, or near a list. */
export function namedTargets(context: AuditContext, block: RecipeBlock): readonly NamedTarget[] {
  const before = known.get(block);
  if (before !== undefined) return before;
  if (!isMix(block, context)) return [];
  const beside = block.layout === "across" ? besideRows(context, block) : [];
  const here = beside.length > 0 ? beside : near(context, block);
  const found = [...here, ...elsewhere(context, block)];
  known.set(block, found);
  return found;
}
