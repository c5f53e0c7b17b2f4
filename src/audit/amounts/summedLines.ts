import { looksNumeric, textAt } from "../recipes/cells";
import { hasWater } from "../recipes/classSheet";
import type { Role } from "../recipes/headings/headerRole";
import { isOfParticles } from "../recipes/amounts/ofParticles";
import type { Recipe, RecipeBlock } from "../recipes/recipeBlock";

/** A column (or row) of numbers that a total may count. */
export interface SummedLine {
  readonly line: number;
  /** Null for a column beside the amounts. */
  readonly recipe: Recipe | null;
  readonly role?: Role | undefined;
}

/** So many columns may go on with a list. */
const REACH = 4;

/** What may be summed up beside the amounts. */
const SUMMED_UP: ReadonlySet<Role | undefined> = new Set([
  "price",
  "amount",
  "other",
  "composition",
]);

/** Whether a column beside the amounts may be summed up; of moles a total may leave out the water on purpose. */
function isSummedUp({ roles, names, range }: RecipeBlock, column: number): boolean {
  const role = roles.get(column);
  const inList = names.filter(({ amountAt }) => amountAt === undefined);
  const isBeyond = role === undefined && column > range.right;
  return isBeyond || SUMMED_UP.has(role) || (role === "moles" && !hasWater({ names: inList }));
}

/** Moles of particles have nothing to be added but each other; those of formula units may be multiplied first. */
export function areMolesOfParticles(
  { sheet, headerRow, roles }: RecipeBlock,
  column: number,
): boolean {
  const isAll = ![...roles.values()].includes("particles");
  const isSaid = isOfParticles(textAt(sheet, headerRow ?? -1, column));
  return roles.get(column) === "moles" && (isAll || isSaid);
}

/** Whether most lines of a list have a number in a column. */
function isFilled({ sheet, names }: RecipeBlock, column: number): boolean {
  const numbers = names.filter(({ row }) => looksNumeric(sheet, row, column));
  return numbers.length * 2 > names.length;
}

/**
 * The columns of a list, with those that stand left of it without a gap: shares before the grams; and right of it,
 * where the list is headed elsewhere: what there has to be in store of each, and its value.
 */
function columnsOf(block: RecipeBlock): number[] {
  let { left, right } = block.range;
  while (block.roles.has(left - 1)) left -= 1;
  while (right < block.range.right + REACH && isFilled(block, right + 1)) right += 1;
  return Array.from({ length: right - left + 1 }, (_, at) => left + at);
}

/** The lines of amounts, and for lists the other columns of numbers. */
export function summedLines(block: RecipeBlock): SummedLine[] {
  const { layout, recipes, repeats = [], names, roles } = block;
  const amounts = [...recipes, ...repeats].map((recipe) => ({ line: recipe.line, recipe }));
  if (layout === "across") return amounts;
  const taken = new Set([...recipes.map(({ line }) => line), ...names.map(({ column }) => column)]);
  const others = columnsOf(block).filter(
    (column) => !taken.has(column) && isSummedUp(block, column),
  );
  return [...amounts, ...others.map((line) => ({ line, recipe: null, role: roles.get(line) }))];
}
