import { contains } from "../../../workbook/references";
import { rangesReadHere } from "../../formulas/rangesReadHere";
import { amountPlace, type Recipe, type RecipeBlock, type RecipeName } from "../recipeBlock";

/** A recipe told in so many amounts is a balance at most; more are a ledger. */
const MOST_LINES = 50;

/** How far apart two shares may be and still be the same. */
const SAME = 0.01;

const numberAt = (block: RecipeBlock, one: Recipe, name: RecipeName): number => {
  const { row, column } = amountPlace(block, one, name);
  const value = block.sheet.cellAt(row, column)?.value;
  return typeof value === "number" ? value : 0;
};

/** Which lines the formula of an amount reads for the same ingredient. */
function linesRead(block: RecipeBlock, name: RecipeName, one: Recipe): readonly Recipe[] {
  const ranges = rangesReadHere(block.sheet, amountPlace(block, one, name));
  return block.recipes.filter((other) => {
    const { row, column } = amountPlace(block, other, name);
    return other !== one && ranges.some((range) => contains(range, row, column));
  });
}

/** Whether most lines have the same share, as those of a smaller batch or of another version have. */
function areAlike(shares: readonly number[]): boolean {
  const isSame = (one: number, other: number) =>
    Math.abs(one - other) <= SAME * Math.max(one, other);
  return shares.some(
    (one) => one > 0 && shares.filter((other) => isSame(one, other)).length * 2 > shares.length,
  );
}

/**
 * Whether one line says how much of each amount of another is water, fat or sugar: a part of it, each another one, worked
 * out of that amount and of nothing else but other contents.
 */
function isContentOf(
  block: RecipeBlock,
  one: Recipe,
  base: Recipe,
  contents: readonly Recipe[],
): boolean {
  const used = block.names.filter((name) => numberAt(block, base, name) > 0);
  const parts = used.map((name) => ({ name, amount: numberAt(block, one, name) }));
  const shares = parts.map(({ name, amount }) => amount / numberAt(block, base, name));
  const filled = parts.filter(({ amount }) => amount !== 0);
  const isWorkedOut = (name: RecipeName) => {
    const read = linesRead(block, name, one);
    return read.includes(base) && read.every((line) => line === base || contents.includes(line));
  };
  return (
    filled.length > 0 &&
    shares.every((share) => share >= 0 && share <= 1 + SAME) &&
    Math.min(...shares) < 1 / 2 &&
    !areAlike(shares) &&
    filled.every(({ name }) => isWorkedOut(name))
  );
}

/** Whether a line puts contents together again, amount by amount. */
const addsContents = (block: RecipeBlock, one: Recipe, contents: readonly Recipe[]): boolean =>
  block.names.every((name) => {
    const read = linesRead(block, name, one);
    return (
      numberAt(block, one, name) === 0 ||
      (read.length >= 2 && read.every((line) => contents.includes(line)))
    );
  });

/**
 * The lines of a balance by their formulas: what each amount of another line holds of water, fat, sugars or solids, and
 * what puts those together again.
 */
export function contentsByFormula(block: RecipeBlock): readonly Recipe[] {
  const { recipes } = block;
  if (recipes.length < 2 || recipes.length > MOST_LINES) return [];
  const among = (contents: readonly Recipe[]) =>
    recipes.filter((one) =>
      recipes.some((base) => base !== one && isContentOf(block, one, base, contents)),
    );
  const contents = among(among([]));
  const others = recipes.filter((one) => !contents.includes(one));
  const added = others.filter((one) => addsContents(block, one, contents));
  return [...contents, ...added];
}
