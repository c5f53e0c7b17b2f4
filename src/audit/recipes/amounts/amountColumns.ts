import type { WorkbookSheet } from "../../../workbook/model";
import { contains, referencesOf } from "../../../workbook/references";
import { columnsOfContents } from "../contents/columnsOfContents";
import { addedColumns } from "./addedColumns";
import { baseColumns } from "./baseColumns";
import { holdsNumber, textAt } from "../cells";
import { countedRecipes } from "./countedRecipes";
import { headerRole, type Role } from "../headings/headerRole";
import { isParted } from "../isParted";
import { type Segment } from "../segments";
import { multipliedColumns } from "./multipliedColumns";
import { unweighed } from "./unweighed";
import { versionsLeft } from "./versionsLeft";
import { weightsOfOne } from "./weightsOfOne";
import { withoutPacks } from "./withoutPacks";
import { isShare, unitFromFormat, unitFromHeader } from "./unit";
import { unitOfHeading } from "./unitOfHeading";

/** What stands beside a list of names. */
export interface Beside {
  readonly roles: ReadonlyMap<number, Role>;
  readonly beside: readonly number[];
  /** The rows of its totals. */
  readonly totals: readonly number[];
}

/** What may stand beside recipes that are headed by their titles only. */
const BESIDE_TITLES = new Set<Role | null>(["price", "total", "unit", "other", null]);

/** Words that may be the title of a recipe. */
const isTitle = (header: string, role: Role | undefined): boolean =>
  header !== "" &&
  (role === "amount" || (headerRole(header) === null && (role ?? "other") === "other")) &&
  !/\b(per|pro|je|unit|einheit|how many|wie ?viele|anzahl)\b|\//i.test(header);

/** Amounts stand right of their names; left of them only where there are none to the right that were typed. */
function preferRight(
  columns: readonly number[],
  names: number,
  isWorkedOut: (column: number) => boolean,
): number[] {
  const right = columns.filter((column) => column > names);
  return right.every(isWorkedOut) ? [...columns] : right;
}

/** Whether a column is worked out line by line from others left of it. */
function isFrom(
  sheet: WorkbookSheet,
  items: readonly number[],
  column: number,
  others: readonly number[],
): boolean {
  const left = others.filter((other) => other < column);
  const lines = items.filter((row) => {
    const formula = sheet.cellAt(row, column)?.formula;
    const read = formula === undefined ? [] : referencesOf(formula);
    return read.some(({ range }) => left.some((at) => contains(range, row, at)));
  });
  return lines.length * 2 > items.length;
}

/** Whether a column says what part of the whole each amount is. */
function isShares(
  sheet: WorkbookSheet,
  items: readonly number[],
  column: number,
  header: string,
): boolean {
  const units = [
    unitFromHeader(header),
    ...items.map((row) => unitFromFormat(sheet.cellAt(row, column)?.format)),
  ];
  return units.some((unit) => unit !== null && isShare(unit));
}

/** Whether a column of which a class says nothing may be what it weighs: typed, and no count of particles. */
const mayBeWeighed = (sheet: WorkbookSheet, items: readonly number[], column: number): boolean => {
  const cells = items.map((row) => sheet.cellAt(row, column));
  const isCount = (value: unknown) => value === 1 || value === 2 || value === 3 || value === 4;
  return (
    cells.every((cell) => cell?.formula === undefined) &&
    !cells.every((cell) => isCount(cell?.value))
  );
};

/**
 * The columns of amounts: those whose header says so; else the only column of numbers; else all columns that
 * are headed by words of which nothing is known, as titles of recipes are.
 */
export function amountColumns(
  sheet: WorkbookSheet,
  segment: Segment,
  items: readonly number[],
  { roles, beside, totals }: Beside,
): number[] {
  const filled = (column: number) => items.filter((row) => holdsNumber(sheet, row, column)).length;
  const header = (column: number) => textAt(sheet, segment.headerRow ?? -1, column);
  const numbers = beside.filter((column) => filled(column) > 0);
  const none = new Set([
    ...unweighed(sheet, numbers, { items, header, roles }),
    ...columnsOfContents(sheet, numbers, { items, header }),
  ]);
  const numeric = numbers.filter((column) => !none.has(column));
  const weighed = numeric.filter((column) => roles.get(column) === "amount");
  const ofOne = weightsOfOne(sheet, segment, items, weighed, { numeric, totals });
  const products = new Set([...weighed.filter((column) => !ofOne.has(column)), ...ofOne.values()]);
  const headed = numeric.filter((column) => products.has(column));
  // Beyond an empty column another list stands beside.
  const near = headed.filter((column) => !isParted(sheet, segment, items, column));
  const named = near.length > 0 ? near : headed;
  const isOfClass = [...roles.values()].includes("molar mass");
  const mayBe = (column: number) => !isOfClass || mayBeWeighed(sheet, items, column);
  const isHeading = (column: number) => isTitle(header(column), roles.get(column)) && mayBe(column);
  const titles = numeric.filter((column) => column > segment.column && isHeading(column));
  // "350 | g" right of the names are its amounts, whatever else is logged beside them: "Minutes".
  const beforeUnits = numeric.filter(
    (column) =>
      column > segment.column &&
      header(column) === "" &&
      roles.get(column + 1) === "unit" &&
      filled(column) * 2 >= items.length,
  );
  if (named.length === 0 && titles.length === 1 && beforeUnits.length === 1) return beforeUnits;
  const isHeaded = named.some((column) => unitOfHeading(header(column)) !== null);
  // "Nut mix" beside "Lemon" is a title, not a heading of amounts.
  if (!isHeaded && named.every((column) => titles.includes(column))) {
    const multiplied = multipliedColumns(sheet, items, named, titles);
    const recipes = titles.filter((column) => !multiplied.has(column));
    if (recipes.length > named.length)
      return [
        ...versionsLeft(sheet, segment, items, { beside, totals, titles, isHeading }),
        ...recipes,
      ];
  }
  const isShareOf = (column: number) => isShares(sheet, items, column, header(column));
  // Shares right of the names say again what the amounts left of them say.
  const amounts = named.filter((column) => !isShareOf(column));
  if (named.length > 0) {
    const weighed = amounts.length > 0 ? amounts : named;
    const chosen = withoutPacks(sheet, items, weighed, roles, totals.length > 0);
    if (chosen.length === 0) return [];
    const made = new Set([
      ...countedRecipes(sheet, items, chosen),
      ...addedColumns(sheet, items, chosen),
    ]);
    const bases = [
      ...baseColumns(sheet, segment.headerRow, items, { numeric, amounts: chosen, roles }),
      ...numeric.filter((column) => made.has(column) && titles.includes(column)),
    ].filter((column) => !chosen.includes(column));
    const all = [...bases, ...chosen].sort((one, other) => one - other);
    return preferRight(all, segment.column, (column) => isFrom(sheet, items, column, all));
  }
  const spoken = (column: number) => {
    const role = roles.get(column) ?? "other";
    return role === "other" ? headerRole(header(column)) : role;
  };
  const unspoken = numeric.filter((column) => spoken(column) === null && mayBe(column));
  const half = (column: number) => filled(column) * 2 >= items.length;
  const filledUp = numeric.filter((column) => half(column) && spoken(column) !== "price");
  if (filledUp.length === 1) return unspoken.filter(half);
  const titled = unspoken.filter(
    (column) => filled(column) >= 2 && textAt(sheet, segment.headerRow ?? -1, column) !== "",
  );
  const isOfRecipes = numeric.every((column) => BESIDE_TITLES.has(spoken(column)));
  return isOfRecipes ? preferRight(titled, segment.column, () => false) : [];
}
