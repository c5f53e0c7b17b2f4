import { isShare } from "./amounts/unit";
import { looksNumeric, textAt } from "./cells";
import { plainWords } from "./headings/plainWords";
import { saysKind } from "./headings/saysKind";
import { saysRecipe } from "./headings/saysRecipe";
import type { Place, RecipeBlock, RecipeName } from "./recipeBlock";

const [REACH_LEFT, REACH_RIGHT] = [6, 3];
const FEWEST_REPEATED = 2;

type Group = readonly RecipeName[];

/** The lines by what a column says of them; a blank goes with the line above. */
function groupsBy({ sheet, names }: RecipeBlock, column: number): Map<string, Group> {
  const groups = new Map<string, Group>();
  let key = "";
  for (const name of names) {
    const said = sheet.cellAt(name.row, column)?.value;
    const text = typeof said === "number" ? String(said) : textAt(sheet, name.row, column);
    if (text !== "") key = text;
    groups.set(key, [...(groups.get(key) ?? []), name]);
  }
  return groups;
}

/** Whether some ingredients stand in several groups and none twice in one: kinds of ingredients share none. */
function shareIngredients(groups: readonly Group[]): boolean {
  const seen = new Set<string>();
  const repeated = new Set<string>();
  for (const group of groups) {
    const items = new Set(group.map(({ item }) => plainWords(item)));
    if (items.size < group.length) return false;
    for (const item of items) (seen.has(item) ? repeated : seen).add(item);
  }
  return repeated.size >= FEWEST_REPEATED;
}

/** What the lines of a group come to in a column. */
const sumOf = ({ sheet }: RecipeBlock, group: Group, column: number): number =>
  group.reduce((sum, { row }) => {
    const value = sheet.cellAt(row, column)?.value;
    return sum + (typeof value === "number" ? value : 0);
  }, 0);

/** What the shares of a recipe come to, however its lines were rounded. */
const isWhole = (sum: number, whole: number): boolean => Math.abs(sum / whole - 1) < 0.1;

/** Whether shares come to a whole in most groups, as those of recipes do; amounts may come to anything. */
const areWholes = (block: RecipeBlock, groups: readonly Group[]): boolean =>
  block.recipes.every(({ unit, line }) => {
    if (!isShare(unit)) return true;
    const whole = unit === "%" ? 100 : 1;
    const wholes = groups.filter((group) => isWhole(sumOf(block, group, line), whole));
    return wholes.length * 2 > groups.length;
  });

/** The recipes of the lines by the column that names them; null when no column does. */
function recipesBy(block: RecipeBlock, column: number): ReadonlyMap<string, Group> | null {
  const { sheet, headerRow, names, recipes } = block;
  const header = plainWords(textAt(sheet, headerRow ?? -1, column));
  const isOther = names[0]?.column === column || recipes.some(({ line }) => line === column);
  if (isOther || header === "" || saysKind(header)) return null;
  const groups = groupsBy(block, column);
  const lists = [...groups.values()];
  if (groups.has("") || lists.filter(({ length }) => length > 1).length < 2) return null;
  if (!areWholes(block, lists)) return null;
  const isSaidEachTime = names.every(({ row }) => textAt(sheet, row, column) !== "");
  return saysRecipe(header) || (isSaidEachTime && shareIngredients(lists)) ? groups : null;
}

const numbersIn = ({ sheet }: RecipeBlock, group: Group, column: number): Place[] =>
  group.flatMap(({ row }) => (looksNumeric(sheet, row, column) ? [{ row, column }] : []));

const SUM = /^\s*(SUM|SUBTOTAL|AGGREGATE)\s*\(/i;
const SAME = 0.005;

/** Whether the one number that a column has in the lines of a recipe sums them up. */
function isTotal(block: RecipeBlock, group: Group, { row, column }: Place): boolean {
  const cell = block.sheet.cellAt(row, column);
  if (SUM.test(cell?.formula ?? "")) return true;
  return block.recipes.some(({ line }) => {
    const sum = sumOf(block, group, line);
    return typeof cell?.value === "number" && Math.abs(cell.value - sum) <= SAME * sum;
  });
}

/** The columns in which most recipes have one number that is their total, and none has more. */
function columnsOfTotals(block: RecipeBlock, groups: readonly Group[]): readonly number[] {
  return [...block.roles.keys()].filter((column) => {
    const numbers = groups.map((group) => numbersIn(block, group, column));
    if (numbers.some(({ length }) => length > 1)) return false;
    const totals = groups.filter((group, at) =>
      (numbers[at] ?? []).some((place) => isTotal(block, group, place)),
    );
    return totals.length * 2 > groups.length;
  });
}

interface OneOfMany {
  readonly title: string;
  readonly group: Group;
  readonly totalColumns: readonly number[];
  readonly ownTotals: readonly number[];
}

const rowsOf = (group: Group): readonly number[] => group.map(({ row }) => row);

/** The rows of totals of each recipe: among its lines, and right below them where all have one there. */
function totalsOf({ totals }: RecipeBlock, groups: readonly Group[]): readonly number[][] {
  const isBelow = (row: number, group: Group) => row === Math.max(...rowsOf(group)) + 1;
  const haveBelow = groups.every((group) => totals.some((row) => isBelow(row, group)));
  return groups.map((group) => {
    const [top, bottom] = [Math.min(...rowsOf(group)), Math.max(...rowsOf(group))];
    return totals.filter(
      (row) => (row > top && row < bottom) || (haveBelow && isBelow(row, group)),
    );
  });
}

function recipeOf(block: RecipeBlock, one: OneOfMany): RecipeBlock {
  const { title, group, totalColumns, ownTotals } = one;
  const { range, headerRow } = block;
  const rows = [...rowsOf(group), ...ownTotals];
  const [top, bottom] = [Math.min(...rows), Math.max(...rows)];
  const recipes = block.recipes.filter(({ line }) => !totalColumns.includes(line));
  const [only, ...more] = recipes;
  const isFirst = block.names[0] === group[0];
  return {
    ...block,
    range: { ...range, top: isFirst ? (headerRow ?? top) : top, bottom },
    names: group,
    // Each list has its own: what is known of a recipe is kept by it.
    recipes: recipes.map((each) => (more.length === 0 ? { ...each, title } : { ...each })),
    totals: ownTotals,
    isOneOfMany: true,
    totalsApart: totalColumns.flatMap((column) =>
      numbersIn(block, group, column).map((place) => ({ ...place, line: only?.line ?? column })),
    ),
  };
}

/** The recipes of a list in which each line, or the first of several, says to which recipe it belongs. */
export function recipesInList(block: RecipeBlock): readonly RecipeBlock[] {
  const { headerRow, names } = block;
  const first = names[0]?.column ?? 0;
  if (headerRow === null) return [block];
  for (let column = Math.max(0, first - REACH_LEFT); column <= first + REACH_RIGHT; column += 1) {
    const groups = recipesBy(block, column);
    if (groups === null) continue;
    const lists = [...groups.values()];
    const totalColumns = columnsOfTotals(block, lists);
    const totals = totalsOf(block, lists);
    return [...groups].map(([title, group], at) =>
      recipeOf(block, { title, group, totalColumns, ownTotals: totals[at] ?? [] }),
    );
  }
  return [block];
}
