import type { WorkbookSheet } from "../../workbook/model";
import { decimalsOf } from "../decimalsOf";
import { amountText } from "../recipes/amountText";
import { textAt } from "../recipes/cells";
import { hasWater } from "../recipes/classSheet";
import { isOfParticles } from "../recipes/ofParticles";
import { amountPlace, type Place, type Recipe, type RecipeBlock } from "../recipes/recipeBlock";
import type { Role } from "../recipes/headerRole";
import { unitText } from "../recipes/unit";

/** A number that belongs into a total. */
export interface Summand {
  readonly place: Place;
  readonly value: number;
}

/** A total with the numbers it should count. */
export interface Totalled {
  readonly sheet: WorkbookSheet;
  readonly place: Place;
  readonly stored: number;
  readonly formula: string | undefined;
  /** Null for a column beside the amounts: costs, moles. */
  readonly recipe: Recipe | null;
  /** Whether its formula alone shows what it should count: a typed total of costs holds more, as rents. */
  readonly byFormula: boolean;
  readonly unit: string;
  /** Numbers as the sheet's own SUM sees them. */
  readonly summands: readonly Summand[];
  /** Amounts typed as text, which a person counts and the sheet does not. */
  readonly textSum: number;
  /** Lines of the other totals among or after the numbers. */
  readonly otherTotals: readonly Place[];
}

interface Line {
  readonly line: number;
  readonly recipe: Recipe | null;
}

const placeIn = ({ layout }: RecipeBlock, line: number, across: number): Place =>
  layout === "down" ? { row: across, column: line } : { row: line, column: across };

/** What may be summed up beside the amounts. */
const SUMMED_UP: ReadonlySet<Role | undefined> = new Set([
  "price",
  "amount",
  "other",
  "composition",
]);

/** Whether a column beside the amounts may be summed up; of moles a total may leave out the water on purpose. */
function isSummedUp({ roles, names }: RecipeBlock, column: number): boolean {
  const role = roles.get(column);
  const inList = names.filter(({ amountAt }) => amountAt === undefined);
  return SUMMED_UP.has(role) || (role === "moles" && !hasWater({ names: inList }));
}

/** Moles of particles have nothing to be added but each other; those of formula units may be multiplied first. */
function areMolesOfParticles({ sheet, headerRow, roles }: RecipeBlock, column: number): boolean {
  const isAll = ![...roles.values()].includes("particles");
  const isSaid = isOfParticles(textAt(sheet, headerRow ?? -1, column));
  return roles.get(column) === "moles" && (isAll || isSaid);
}

/** The lines of amounts, and for lists the other columns of numbers. */
function linesOf(block: RecipeBlock): Line[] {
  const { layout, recipes, repeats = [], range, names } = block;
  const amounts = [...recipes, ...repeats].map((recipe) => ({ line: recipe.line, recipe }));
  if (layout === "across") return amounts;
  const taken = new Set([...recipes.map(({ line }) => line), ...names.map(({ column }) => column)]);
  const columns = Array.from({ length: range.right - range.left + 1 }, (_, at) => range.left + at);
  const others = columns.filter((column) => !taken.has(column) && isSummedUp(block, column));
  return [...amounts, ...others.map((line) => ({ line, recipe: null }))];
}

function totalledAt(
  block: RecipeBlock,
  { line, recipe }: Line,
  total: number,
  place: Place = placeIn(block, line, total),
): Totalled | null {
  const { sheet, layout, names, totals } = block;
  const cell = sheet.cellAt(place.row, place.column);
  if (typeof cell?.value !== "number") return null;
  // A total above the list counts all of it.
  const isOnTop = names.every(({ row }) => row > total);
  const before = names
    .filter(({ amountAt }) => amountAt === undefined)
    .map((name) =>
      recipe === null ? { row: name.row, column: line } : amountPlace(block, recipe, name),
    )
    .filter(({ row }) => layout === "across" || isOnTop || row < total);
  const values = before.map((at) => ({ place: at, value: sheet.cellAt(at.row, at.column)?.value }));
  const texts = values.map(({ value }) =>
    typeof value === "string" ? (amountText(value)?.number ?? 0) : 0,
  );
  return {
    sheet,
    place,
    stored: cell.value,
    formula: cell.formula,
    recipe,
    byFormula: recipe === null && (cell.formula !== undefined || !areMolesOfParticles(block, line)),
    unit: recipe === null ? "" : unitText(recipe.unit),
    summands: values.flatMap(({ place: at, value }) =>
      typeof value === "number" ? [{ place: at, value }] : [],
    ),
    textSum: texts.reduce((sum, value) => sum + value, 0),
    otherTotals: totals
      .filter((other) => other !== total)
      .map((other) => placeIn(block, line, other)),
  };
}

/** The totals of a block with what they should count, one at a time: a ledger has a hundred thousand. */
export function* totalledLines(block: RecipeBlock): Generator<Totalled, undefined> {
  for (const line of linesOf(block)) {
    for (const total of block.totals) {
      const totalled = totalledAt(block, line, total);
      if (totalled !== null) yield totalled;
    }
  }
  for (const recipe of block.recipes.slice(0, 1)) {
    for (const place of block.totalsBeside ?? []) {
      const line = { line: recipe.line, recipe };
      const totalled = totalledAt(block, line, Number.POSITIVE_INFINITY, place);
      if (totalled !== null) yield totalled;
    }
  }
}

export const sumOf = (summands: readonly Summand[]): number =>
  summands.reduce((sum, { value }) => sum + value, 0);

/** The summands after the last other total before this one: what a subtotal counts. */
export function sinceLastTotal({ summands, otherTotals, place }: Totalled): readonly Summand[] {
  const previous = otherTotals.filter(({ row }) => row < place.row).map(({ row }) => row);
  const last = Math.max(-1, ...previous);
  return summands.filter(({ place: { row } }) => row > last);
}

/** Typed totals are rounded: they may differ from the sum by half a percent; moles, in few figures, by more. */
export function agrees({ stored, formula, recipe }: Totalled, sum: number): boolean {
  const rounding = recipe === null && formula === undefined ? 0.5 / 10 ** decimalsOf(stored) : 0;
  return Math.abs(sum - stored) <= Math.max(0.005 * Math.abs(sum), rounding) + 1e-9;
}
