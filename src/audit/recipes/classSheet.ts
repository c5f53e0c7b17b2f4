import { isBlank, textAt } from "./cells";
import type { Role } from "./headings/headerRole";
import type { Recipe, RecipeBlock, RecipeName } from "./recipeBlock";
import { massIn } from "./amounts/unit";
import { waterByFormula } from "./amounts/waterByFormula";
import { waterInRows } from "./amounts/waterInRows";
import { waterLabel } from "./amounts/waterLabel";
import { unitOfColumn, weighedColumns } from "./tableOfSolutions";

const OF_CLASS: readonly Role[] = ["molar mass", "moles", "particles"];
const IS_WATER = /\bwater\b|wasser\b/i;

const isSaidByClass = (details: ReadonlyMap<Role, unknown>): boolean =>
  OF_CLASS.some((role) => details.has(role));

/** Whether the columns of a list work with moles: then one solute is a mix, with its water elsewhere. */
export const isClassSheet = (roles: ReadonlyMap<number, Role>): boolean =>
  [...roles.values()].some((role) => OF_CLASS.includes(role));

/** Whether a block works with moles: a list with such columns or with such things said of a name, or a worked example. */
export const isClassBlock = ({ roles, answers, layout, names }: RecipeBlock): boolean =>
  answers !== undefined ||
  (layout === "down" && isClassSheet(roles)) ||
  names.some(({ details }) => details !== undefined && isSaidByClass(details));

/** Whether water is among the names of a block. */
export const hasWater = ({ names }: Pick<RecipeBlock, "names">): boolean =>
  names.some(({ item }) => IS_WATER.test(item));

function rowBlock(
  block: RecipeBlock,
  recipe: Recipe,
  name: RecipeName,
  column: number,
): RecipeBlock {
  const { row } = name;
  const unit = unitOfColumn(block, column);
  const amountAt = { row, column };
  const water = { row, column, item: "water", amountAt, ...(unit !== null && { unit }) };
  return rowOf(block, recipe, name, water);
}

/** A row of a table of solutions as a mix of its own. */
function rowOf(
  block: RecipeBlock,
  recipe: Recipe,
  name: RecipeName,
  water: RecipeName,
): RecipeBlock {
  const { row } = name;
  return {
    ...block,
    range: { ...block.range, top: row, bottom: row },
    names: [name, water],
    recipes: [{ ...recipe, title: name.item }],
    totals: [],
  };
}

/** Water below a gap is no line of the list, though its number stands in the column of the amounts. */
function withWaterApart(block: RecipeBlock): RecipeBlock {
  const [recipe, ...more] = block.recipes;
  const rows = new Set([...block.names.map(({ row }) => row), ...block.totals]);
  if (recipe === undefined || more.length > 0) return block;
  const names = block.names.map((name) => {
    const isApart =
      IS_WATER.test(name.item) && !rows.has(name.row - 1) && name.row - 1 !== block.headerRow;
    const isAlone = [...block.roles.keys()].every(
      (column) =>
        column === recipe.line || column <= name.column || isBlank(block.sheet, name.row, column),
    );
    const beside = massIn(textAt(block.sheet, name.row, recipe.line + 1));
    const unit = name.unit ?? beside ?? undefined;
    return isApart && isAlone
      ? {
          ...name,
          amountAt: { row: name.row, column: recipe.line },
          ...(unit !== undefined && { unit }),
        }
      : name;
  });
  return { ...block, names };
}

const IN_EACH = /\b(each|every|jede[mnrs]?)\b/i;
const ANSWERS = new Set<Role>(["freezing point", "depression", "molality"]);

/** Whether the water beside a list is that of each of its rows: it says so, or a row has a freezing point of its own. */
function isOfEach({ sheet, names, roles }: RecipeBlock, water: RecipeName): boolean {
  const isFilled = (column: number) =>
    names.filter(({ row }) => !isBlank(sheet, row, column)).length >= 2;
  const answers = [...roles].filter(([column, role]) => ANSWERS.has(role) && isFilled(column));
  const saysSo = IN_EACH.test(textAt(sheet, water.row, water.column));
  return answers.some(([, role]) => saysSo || role === "freezing point");
}

/** Rows of a ledger of solutions that are read one by one. */
const MOST_ROWS = 300;

/** A list of solutes with the water it is dissolved in: one mix, or one for each row. */
export function withItsWater(block: RecipeBlock): readonly RecipeBlock[] {
  if (hasWater(block)) return [withWaterApart(block)];
  const [first] = block.recipes;
  const divisor = waterInRows(block);
  const byFormula =
    divisor === null || first === undefined || unitOfColumn(block, divisor) === null
      ? null
      : { water: divisor, recipe: first };
  const weighed = weighedColumns(block) ?? byFormula;
  if (weighed !== null) {
    const { water, recipe } = weighed;
    return block.names
      .slice(0, MOST_ROWS)
      .filter(({ row }) => !isBlank(block.sheet, row, water))
      .map((name) => rowBlock(block, recipe, name, water));
  }
  // Rows that are divided by something without a unit of mass are solutions, but nobody knows how strong.
  if (divisor !== null) return [];
  const apart = waterByFormula(block) ?? waterLabel(block.sheet, block);
  if (apart !== null && first !== undefined && isOfEach(block, apart)) {
    return block.names
      .slice(0, MOST_ROWS)
      .map((name) => rowOf(block, first, name, { ...apart, row: name.row }));
  }
  return [apart === null ? block : { ...block, names: [...block.names, apart] }];
}
