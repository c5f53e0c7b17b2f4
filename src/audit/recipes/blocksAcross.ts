import type { CellRange } from "../../workbook/model";
import { referencesOf, type Reference } from "../../workbook/references";
import { NAMESPACE } from "../../worksheet/namespace";
import { classAcross } from "./classAcross";
import type { FinderContext } from "./finderContext";
import { holdsNumber, isBlank, textAt } from "./cells";
import { headerRole, type Role } from "./headings/headerRole";
import type { RecipeBlock, RecipeName } from "./recipeBlock";
import { isTaken } from "./isTaken";
import { headersAcross } from "./headings/headersAcross";
import { unitOfNames } from "./names/namesAcross";
import { runs, type SheetTexts } from "./sheetTexts";
import { sharesInRows } from "./amounts/sharesInRows";
import { unitOfTotals } from "./amounts/unitOfTotals";
import { recipesAcross } from "./recipesAcross";
import { unitFromWord } from "./amounts/unit";
import { areNamesOfCall } from "./mixCalls";
import { plainWords } from "./headings/plainWords";

/** First row of amounts below a header row; a row of units between them is passed over. */
function firstAmountRow(
  { sheet }: FinderContext,
  header: number,
  columns: readonly number[],
): number | null {
  const numeric = (row: number) =>
    columns.filter((column) => holdsNumber(sheet, row, column)).length;
  if (numeric(header + 1) >= 2) return header + 1;
  const units = columns.filter(
    (column) => unitFromWord(textAt(sheet, header + 1, column)) !== null,
  );
  return units.length >= 2 && numeric(header + 2) >= 2 ? header + 2 : null;
}

function isRecipeRow(context: FinderContext, names: readonly RecipeName[]): boolean {
  const known = names.filter(({ item }) => context.check(item).kind !== "unknown").length;
  const isAsked = known > 0 && areNamesOfCall(context.calls, names);
  return (known >= 2 || isAsked) && known * 2 >= names.length;
}

/** What own ingredients are made of, which no recipe is: a table of "name", "water", "fat" and "protein". */
const MADE_OF =
  /^(fat|fett|protein|eiwei(ß|ss)|inert|fib(re|er)|ballaststoffe|ash|asche|solids|brix|trockenmasse)$/;

function isCompositions({ sheet }: FinderContext, header: number, run: readonly number[]): boolean {
  const headers = run.map((column) => plainWords(textAt(sheet, header, column)));
  return (
    headers.some((one) => headerRole(one) === "name") &&
    headers.filter((one) => MADE_OF.test(one)).length >= 2
  );
}

/** Without the titles before them, which nothing known stands for and below which nothing stands. */
function withoutTitles(context: FinderContext, names: readonly RecipeName[], first: number) {
  const isName = ({ item, column }: RecipeName) =>
    context.check(item).kind !== "unknown" || !isBlank(context.sheet, first, column);
  return names.slice(Math.max(0, names.findIndex(isName)));
}

function blockAt(
  context: FinderContext,
  header: number,
  run: readonly number[],
): RecipeBlock | null {
  const { sheet, ownIngredients } = context;
  const first = firstAmountRow(context, header, run);
  if (first === null || isCompositions(context, header, run)) return null;
  const { names: found, totals, roles } = headersAcross(context, header, run, first);
  const headed = withoutTitles(context, found, first);
  if (headed.length < 2 || !isRecipeRow(context, headed)) return null;
  const unit =
    unitOfNames(context, headed, header) ??
    unitOfTotals(sheet, headed, totals, { header, first }) ??
    sharesInRows(sheet, headed, first);
  const left = run[0] ?? 0;
  const rows = recipesAcross(context, { names: headed, first, left, unit });
  const { recipes, repeats, bottom } = rows;
  if (recipes.length === 0) return null;
  const isUsed = ({ column }: RecipeName) =>
    recipes.some(({ line }) => !isBlank(sheet, line, column));
  const names = headed.filter(
    (name) => isUsed(name) || context.check(name.item).kind !== "unknown",
  );
  return classAcross(context, {
    sheet,
    layout: "across",
    range: { top: header, left, bottom, right: run.at(-1) ?? 0 },
    headerRow: header,
    names,
    recipes,
    ...(repeats.length > 0 && { repeats }),
    totals,
    unitColumn: null,
    roles,
    ownIngredients,
  });
}

const ANSWERS: readonly Role[] = ["freezing point", "depression", "ice fraction"];

const hasAnswers = ({ roles }: RecipeBlock): boolean =>
  [...roles.values()].some((role) => ANSWERS.includes(role));

/** Whether a row has its answers by calls of our functions on other rows: so it says something of those. */
function isOfOtherRows(block: RecipeBlock): boolean {
  const { sheet, roles, recipes, range } = block;
  const [first] = recipes;
  const asked = [...roles].flatMap(([column, role]) => {
    const formula = sheet.cellAt(first?.line ?? -1, column)?.formula ?? "";
    const isCall = ANSWERS.includes(role) && formula.toUpperCase().includes(`${NAMESPACE}.`);
    return isCall ? [referencesOf(formula)] : [];
  });
  const isElsewhere = ({ sheet: on, range: { top, bottom } }: Reference) =>
    (on !== null && on !== sheet.name) || bottom < range.top || top > range.bottom;
  return asked.length > 0 && asked.every((read) => read.every(isElsewhere));
}

/** Whether each row is called like a recipe of a list on the same sheet. */
function isOfListed({ recipes }: RecipeBlock, lists: readonly RecipeBlock[]): boolean {
  const titles = new Set(
    lists.flatMap((list) => list.recipes.map(({ title }) => plainWords(title))),
  );
  return recipes.every(({ title }) => title !== "" && titles.has(plainWords(title)));
}

/**
 * Whether a table says of recipes that stand right above it, or in lists of the sheet, when they freeze and how much
 * water, sugar or alcohol is in them.
 */
function isOfAnswers(
  block: RecipeBlock,
  above: RecipeBlock | undefined,
  lists: readonly RecipeBlock[],
): boolean {
  const { sheet, range, names } = block;
  const isOfPart = ({ row, column }: RecipeName) => {
    const role = headerRole(textAt(sheet, row, column));
    return role !== null && role !== "amount";
  };
  if (!hasAnswers(block) || !names.every(isOfPart)) return false;
  const isBelow = above !== undefined && above.range.bottom + 1 === range.top && !hasAnswers(above);
  return isBelow || isOfListed(block, lists);
}

/** Whether answers stand before what may be names: what else is asked of a mix above goes on with its water and its alcohol. */
const beginsWithAnswers = ({ roles, names }: RecipeBlock): boolean =>
  [...roles].filter(([column, role]) => ANSWERS.includes(role) && column < (names[0]?.column ?? 0))
    .length >= 2;

/**
 * Finds recipes that stand one to a row below a row of ingredients; what stands in `taken` is something else, and
 * `lists` are the recipes that stand one below the other.
 */
export function blocksAcross(
  context: FinderContext,
  texts: SheetTexts,
  taken: readonly CellRange[],
  lists: readonly RecipeBlock[],
): RecipeBlock[] {
  const blocks: RecipeBlock[] = [];
  let below = -1;
  for (const [row, columns] of texts.columnsByRow) {
    if (row <= below) continue;
    for (const run of runs(columns, 0)) {
      const block = run.length < 2 || isTaken(taken, row, run) ? null : blockAt(context, row, run);
      if (block === null || isOfAnswers(block, blocks.at(-1), lists) || isOfOtherRows(block))
        continue;
      if (blocks.length > 0 && beginsWithAnswers(block)) continue;
      blocks.push(block);
      below = Math.max(below, block.range.bottom);
    }
  }
  return blocks;
}
