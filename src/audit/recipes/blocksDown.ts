import { amountColumns } from "./amounts/amountColumns";
import { areConverted } from "./amounts/areConverted";
import { chemicalName } from "./names/chemicalName";
import { isBlank, textAt } from "./cells";
import { endOfList } from "./endOfList";
import { listsInColumn } from "./listsInColumn";
import { columnsOfList, rolesBeside } from "./listColumns";
import { guessedHeader } from "./guessedHeader";
import { isClassSheet, withItsWater } from "./classSheet";
import type { FinderContext } from "./finderContext";
import { isBelowRemarks, isOfRemarks, isSaidOf } from "./names/remarks";
import { itemsAndTotals } from "./totals/itemsAndTotals";
import { areNamesOfCall } from "./mixCalls";
import { plainWords } from "./headings/plainWords";
import { nameInList } from "./names/nameInList";
import { saysRecipe } from "./headings/saysRecipe";
import type { RecipeBlock, RecipeName } from "./recipeBlock";
import { recipeInColumn } from "./recipeInColumn";
import { recipesInList } from "./recipesInList";
import { isParted } from "./isParted";
import type { Segment } from "./segments";
import type { SheetTexts } from "./sheetTexts";
import { totalsInDisguise } from "./totals/totalsInDisguise";
import { isTableOfSolutions } from "./tableOfSolutions";
import { isShare, unitFromWord } from "./amounts/unit";
import { unitBeside } from "./amounts/unitBeside";
import { unitOfList } from "./amounts/unitOfList";
import { withoutMeasures } from "./amounts/withoutMeasures";
import { isOverview } from "./isOverview";
import { withoutLinesAbove } from "./names/withoutLinesAbove";
import { withoutLinesBelow } from "./names/withoutLinesBelow";
import { withoutRemarks } from "./names/withoutRemarks";
import { withoutSums } from "./totals/withoutSums";

/** At least half of the names with an amount must be known, and two of them, or it is no recipe. */
function isRecipe(
  context: FinderContext,
  names: readonly RecipeName[],
  columns: readonly number[],
  least: number,
): boolean {
  const used = names.filter(({ row }) =>
    columns.some((column) => !isBlank(context.sheet, row, column)),
  );
  const known = used.filter(({ item }) => context.check(item).kind !== "unknown");
  const isAsked = known.length > 0 && areNamesOfCall(context.calls, used);
  // "Half" beside one bottle and another says how much is left; a series of solutions has one solute.
  const different = new Set(known.map(({ item }) => plainWords(item))).size;
  const isOfOne = different < least && known.length < used.length;
  const isList = known.length >= least && !isOfOne;
  return (isList || isAsked) && known.length * 2 >= used.length;
}

/** Of a list that nothing but its names says to be a recipe, so many may be unknown: what lies in a freezer is none. */
const MOST_UNKNOWN = 0.25;

const areMostlyKnown = ({ check }: FinderContext, names: readonly RecipeName[]): boolean => {
  const unknown = names.filter(({ item }) => check(item).kind === "unknown").length;
  return unknown <= Math.max(1, Math.floor(MOST_UNKNOWN * names.length));
};

/** Whether nothing of what is known in a list is weighed or measured: "3 | tins of 400 g" is in store or to buy. */
function isCounted(
  { sheet, check }: FinderContext,
  names: readonly RecipeName[],
  units: number,
): boolean {
  const known = names.filter(({ item }) => check(item).kind !== "unknown");
  const said = known.map(({ row }) => textAt(sheet, row, units));
  return said.length > 0 && said.every((unit) => unit !== "" && unitFromWord(unit) === null);
}

/** Whether a column is headed as one of recipes, and those beside it by ingredients: each of its rows is a recipe. */
function hasRecipesInRows(
  { sheet, check }: FinderContext,
  { column, headerRow }: Segment,
  columns: readonly number[],
): boolean {
  if (headerRow === null || !saysRecipe(textAt(sheet, headerRow, column))) return false;
  const names = columns.filter((at) => check(textAt(sheet, headerRow, at)).kind !== "unknown");
  return names.length > 1 && names.length * 2 > columns.length;
}

function nameAt({ sheet, check }: FinderContext, row: number, column: number): RecipeName {
  const { item, unit } = nameInList(textAt(sheet, row, column), check);
  return { row, column, item, ...(unit !== null && { unit }) };
}

function blockOf(context: FinderContext, found: Segment): RecipeBlock | null {
  const { sheet, ownIngredients } = context;
  const segment = found.headerRow === null ? guessedHeader(sheet, found) : found;
  if (isOfRemarks(sheet, segment)) return null;
  const { items, totals: said } = itemsAndTotals(context, segment);
  const all = rolesBeside(sheet, segment, items);
  const beside = columnsOfList(sheet, segment, items);
  const chosen = amountColumns(sheet, segment, items, { roles: all, beside, totals: said });
  const columns = withoutMeasures(sheet, items, withoutSums(sheet, items, chosen), all);
  const { column, headerRow } = segment;
  if (hasRecipesInRows(context, segment, columns)) return null;
  // On the side where no amounts stand, what is beyond an empty column is another list's.
  const isLeft = columns.every((each) => each < column);
  const isOwn = (each: number) =>
    each < column === isLeft || !isParted(sheet, segment, items, each);
  const roles = new Map([...all].filter(([each]) => isOwn(each)));
  const isFree = (row: number) => columns.every((each) => isBlank(sheet, row, each));
  const others = [...roles].flatMap(([each, role]) =>
    role === "amount" && !columns.includes(each) ? each : [],
  );
  const unsaid = [
    ...totalsInDisguise(context, column, items, columns, said),
    // Shares may be summed up where the grams beside them are not.
    ...totalsInDisguise(context, column, items, others, said).filter(isFree),
  ];
  const totals = [...said, ...unsaid].sort((one, other) => one - other);
  const isClass = isClassSheet(roles);
  const listed = items
    .filter((row) => !unsaid.includes(row))
    .filter((row) => columns.some((amounts) => !isBlank(sheet, row, amounts)))
    .map((row) => nameAt(context, row, column))
    .map((name) =>
      isClass ? { ...name, item: chemicalName(name.item, context.check) ?? name.item } : name,
    );
  if (isOverview(sheet, listed, columns)) return null;
  const above = withoutLinesAbove(context, listed, columns, totals);
  const ingredients = withoutLinesBelow(context, above, columns, totals);
  const names = withoutRemarks(context, ingredients, columns);
  const least = isClass ? 1 : 2;
  if (columns.length === 0 || names.length < least || !isRecipe(context, names, columns, least))
    return null;
  // The same recipe as shares left of the names belongs to the list, too.
  const left = [...roles].flatMap(([each, role]) =>
    role === "amount" && each < column && !isParted(sheet, segment, items, each) ? each : [],
  );
  // Left of an empty column the units are those of another list.
  const near = new Map(
    [...roles].filter(([each]) => each > column || !isParted(sheet, segment, items, each)),
  );
  const rows = names.map(({ row }) => row);
  const unit = unitOfList(sheet, segment, names, totals, columns[0] ?? column);
  const title = columns.length === 1 && segment.title !== undefined && { title: segment.title };
  const isInOwnUnit = segment.isAgain === true && unit !== null;
  const besideNames = unitBeside(near, column, columns);
  const isOfOther = besideNames !== null && areConverted(sheet, rows, columns, besideNames);
  const units = isOfOther ? null : besideNames;
  if (units !== null && isCounted(context, names, units)) return null;
  const recipes = columns.map((line) => ({
    ...recipeInColumn(sheet, headerRow, line, rows, unit),
    // Beside a column of units a title or a total says nothing of the single line.
    ...(units !== null && {
      unitAssumed: recipeInColumn(sheet, headerRow, line, rows).unitAssumed,
    }),
    ...(isInOwnUnit && { unit, unitAssumed: false }),
    ...title,
  }));
  const isSaid =
    units !== null ||
    totals.length > 0 ||
    recipes.some(({ line, unitAssumed }) => !unitAssumed || roles.get(line) === "amount");
  if (!isSaid && !areMostlyKnown(context, names)) return null;
  const masses = recipes.filter(({ unit }) => !isShare(unit));
  return {
    sheet,
    layout: "down",
    range: {
      top: (segment.isContinued === true ? null : headerRow) ?? names[0]?.row ?? 0,
      left: Math.min(column, ...columns, ...left),
      bottom: Math.max(...names.map(({ row }) => row), ...totals),
      right: Math.max(column, ...columns, ...roles.keys()),
    },
    headerRow,
    names,
    // A share column beside one of grams says the same recipe again.
    recipes: masses.length > 0 ? masses : recipes,
    totals,
    unitColumn: units,
    roles,
    ownIngredients,
  };
}

/** How many different known names a list has. */
const knownNames = ({ check }: FinderContext, { names }: RecipeBlock): number =>
  new Set(
    names.filter(({ item }) => check(item).kind !== "unknown").map(({ item }) => plainWords(item)),
  ).size;

/**
 * Finds recipes whose ingredients stand one below the other. Of words on both sides of the same amounts those are the
 * names of which more are known: "Lager" beside some lines says where they are kept.
 */
export function blocksDown(context: FinderContext, texts: SheetTexts): RecipeBlock[] {
  let blocks: RecipeBlock[] = [];
  for (const [column, rows] of texts.rowsByColumn) {
    for (const segment of listsInColumn(context, column, rows)) {
      if (isBelowRemarks(context.sheet, segment, rows)) continue;
      const end = endOfList(context, segment);
      const block = blockOf(context, end === null ? segment : { ...segment, end });
      if (block === null) continue;
      const rivals = blocks.filter((other) => isSaidOf(other, block));
      const known = knownNames(context, block);
      if (rivals.some((other) => knownNames(context, other) >= known)) continue;
      blocks = blocks.filter((other) => !rivals.includes(other));
      const isOfSolutions = isClassSheet(block.roles) || isTableOfSolutions(block);
      blocks.push(...(isOfSolutions ? withItsWater(block) : recipesInList(block)));
    }
  }
  return blocks;
}
