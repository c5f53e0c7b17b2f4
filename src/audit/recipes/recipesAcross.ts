import type { WorkbookSheet } from "../../workbook/model";
import { holdsNumber, isBlank, looksNumeric, textAt } from "./cells";
import type { FinderContext } from "./finderContext";
import { headerRole, type Role } from "./headings/headerRole";
import type { Recipe, RecipeName } from "./recipeBlock";
import { factorRows } from "./totals/factorRows";
import { isSummaryRow, isSummaryTitle } from "./totals/summaryRow";
import { ofMoney } from "./amounts/ofMoney";
import { shareUnit } from "./amounts/shareUnit";
import { titleOfRow } from "./names/titleOfRow";
import { isMass, isShare, unitFromWord, type AmountUnit } from "./amounts/unit";
import { unitOfHeading } from "./amounts/unitOfHeading";

/** Where a table of recipes, one to a row, stands. */
export interface RowsOfAmounts {
  readonly names: readonly RecipeName[];
  /** The first row of amounts. */
  readonly first: number;
  /** The first column of the table. */
  readonly left: number;
  /** The unit that the table names for all of it. */
  readonly unit: AmountUnit | null;
}

/** Labels of rows that say something else of each ingredient, where most labels are headings. */
const NO_RECIPE: ReadonlySet<Role | null> = new Set<Role | null>([
  ...(["price", "molar mass", "moles", "particles", "molality", "abv", "ethanol"] as const),
  ...(["counts as solute", "freezing point", "depression", "cryoscopic constant"] as const),
  ...(["measured", "composition", "ice fraction", "unit", "temperature"] as const),
]);

/**
 * A recipe laid on its side: its rows are headed like the columns of a list. Among recipes, too, what is said in
 * money is none.
 */
function amountRows(rows: readonly Recipe[]): Recipe[] {
  const roles = rows.map(({ title }) => headerRole(title));
  const heads = roles.filter((role) => role !== null).length;
  const isNone = (role: Role | null) =>
    heads * 2 > rows.length ? NO_RECIPE.has(role) : role === "price";
  return rows.filter((_, at) => !isNone(roles[at] ?? null));
}

/** The unit that a row of units right below or above a row of amounts gives to all of them. */
function unitOfRowBeside({ sheet }: FinderContext, row: number, { names }: RowsOfAmounts) {
  const used = names.filter(({ column }) => !isBlank(sheet, row, column));
  const units = [row + 1, row - 1].map((beside) => {
    const unitAt = ({ column }: RecipeName) => unitFromWord(textAt(sheet, beside, column));
    const unit = used[0] === undefined ? null : unitAt(used[0]);
    const isForAll = unit !== null && used.slice(1).every((name) => unitAt(name) === unit);
    return isForAll ? unit : null;
  });
  return units.find((unit) => unit !== null) ?? null;
}

/** Words that say a unit along with something else. */
const saysUnit = (label: string): boolean =>
  /[([,]|\bin\b/.test(label) || headerRole(label) === "amount";

/** Labels of a row stand at most so far left of its amounts where its table begins later. */
const REACH = 4;

/** What stands left of a row's amounts, the nearest first, as far as no number of another table comes between. */
function labelsBefore(sheet: WorkbookSheet, row: number, left: number, from: number): string[] {
  const labels: string[] = [];
  for (let column = from - 1; column >= Math.max(0, Math.min(left, from - REACH)); column -= 1) {
    if (column < left && looksNumeric(sheet, row, column)) break;
    const label = textAt(sheet, row, column);
    if (label !== "") labels.push(label);
  }
  return labels;
}

const firstOf = (units: readonly (AmountUnit | null)[]): AmountUnit | null =>
  units.find((unit) => unit !== null) ?? null;

/**
 * The unit of one row: by a word of its own before the amounts, in their label or title, in a row of units beside, or
 * that of shares.
 */
function unitOfRow(context: FinderContext, row: number, table: RowsOfAmounts) {
  const { sheet } = context;
  const labels = labelsBefore(sheet, row, table.left, table.names[0]?.column ?? 0);
  const values = table.names.map(({ column }) => sheet.cellAt(row, column)?.value);
  return (
    firstOf(labels.map(unitFromWord)) ??
    firstOf(labels.filter(saysUnit).map(unitOfHeading)) ??
    unitOfRowBeside(context, row, table) ??
    firstOf(labels.map((label) => shareUnit(label, values)))
  );
}

/** Amounts and shares of the same recipe, one above the other: what is worked out from what was typed says it again. */
function repeatsAmong({ sheet }: FinderContext, names: readonly RecipeName[], all: Recipe[]) {
  const isWorkedOut = ({ line }: Recipe) =>
    names.every(({ column }) => {
      const cell = sheet.cellAt(line, column);
      return typeof cell?.value !== "number" || cell.formula !== undefined;
    });
  const repeats = new Set<Recipe>();
  for (const [at, one] of all.entries()) {
    const other = all[at + 1];
    if (other?.line !== one.line + 1 || repeats.has(one)) continue;
    const [share, mass] = isShare(one.unit) ? [one, other] : [other, one];
    if (!isShare(share.unit) || !isMass(mass.unit)) continue;
    const [worked] = [mass, share].filter(isWorkedOut);
    if (worked !== undefined) repeats.add(worked);
  }
  return repeats;
}

/** Whether after a blank row the next one goes on with amounts, rather than with prices or molar masses. */
function isGap({ sheet }: FinderContext, { names, left }: RowsOfAmounts, row: number): boolean {
  const amounts = names.filter(({ column }) => looksNumeric(sheet, row + 1, column));
  const title = titleOfRow(sheet, row + 1, left, names[0]?.column ?? 0);
  return amounts.length >= 2 && !NO_RECIPE.has(headerRole(title));
}

/** Recipes, one to a row, and the last row that belongs to their table. */
export interface RecipesAcross {
  readonly recipes: readonly Recipe[];
  /** Rows that say one of them again in another unit. */
  readonly repeats: readonly Recipe[];
  readonly bottom: number;
}

/**
 * The rows of amounts below a row of names, down to the first wholly blank one after which no amounts follow;
 * averages, sums, prices and molar masses are no recipes.
 */
export function recipesAcross(context: FinderContext, table: RowsOfAmounts): RecipesAcross {
  const { sheet } = context;
  const { names, left } = table;
  const firstColumn = names[0]?.column ?? 0;
  const factors = factorRows(sheet, table.first, names);
  const recipes: Recipe[] = [];
  let title = "";
  for (let row = table.first; row < sheet.rowCount; row += 1) {
    if (names.every(({ column }) => isBlank(sheet, row, column))) {
      if (isGap(context, table, row)) continue;
      break;
    }
    const said = titleOfRow(sheet, row, left, firstColumn);
    if (isSummaryTitle(said) || isSummaryRow(sheet, row, names)) continue;
    if (!names.some(({ column }) => holdsNumber(sheet, row, column))) break;
    if (factors.has(row)) continue;
    title = title !== "" && unitFromWord(said) !== null ? title : said;
    const unit = unitOfRow(context, row, table) ?? table.unit;
    recipes.push({ title, line: row, unit: unit ?? "g", unitAssumed: unit === null });
  }
  const money = ofMoney(sheet, names, recipes);
  const rows = amountRows(recipes).filter(({ line }) => !money.has(line));
  const repeats = repeatsAmong(context, names, rows);
  return {
    recipes: rows.filter((one) => !repeats.has(one)),
    repeats: [...repeats],
    bottom: recipes.at(-1)?.line ?? table.first,
  };
}
