import { badInput, isProblem, type Problem } from "../foundation/problem";
import type { Cell } from "../foundation/cell";
import type { Result } from "../foundation/result";
import type { Solute } from "../catalogue/solute";
import { shownCell } from "./shownCell";
import type { OwnColumn, OwnHeader } from "./ownHeaders";
import { passedOn } from "./passedOn";

/** One row of the own-ingredients range with its cells checked: a blank number is null. */
export interface OwnRow {
  readonly numbers: Readonly<Partial<Record<OwnHeader, number>>>;
  readonly texts: Readonly<Partial<Record<OwnHeader, string>>>;
  readonly solutes: readonly (readonly [Solute, number])[];
}

const TEXTS: readonly OwnColumn[] = ["name", "same as", "allergens", "cautions", "source"];

const limitOf = (column: OwnColumn): readonly [most: number, unit: string] => {
  if (column === "g per mL") return [25, "g per mL"];
  if (column === "g per piece") return [100_000, "g per piece"];
  return [100, column === "abv" ? "% by volume" : column === "brix" ? "°Bx" : "g per 100 g"];
};

function numberOf(cell: Exclude<Cell, null | Problem>, column: OwnColumn, place: string) {
  const [most, unit] = limitOf(column);
  if (typeof cell === "number" && cell >= 0 && cell <= most) return cell;
  const shown = shownCell(cell);
  return badInput(`${place}: this is ${shown}; a number from 0 to ${most} ${unit} is expected.`);
}

/** Checks the cells of a row; the first that cannot be read is the row's problem. */
export function ownRow(
  cells: readonly Cell[],
  columns: readonly OwnColumn[],
  placeOf: (column: number) => string,
): Result<OwnRow> {
  const numbers: Partial<Record<OwnHeader, number>> = {};
  const texts: Partial<Record<OwnHeader, string>> = {};
  const solutes: (readonly [Solute, number])[] = [];
  for (const [at, column] of columns.entries()) {
    const cell = cells[at] ?? null;
    if (column === null || cell === null) continue;
    if (isProblem(cell)) return passedOn(cell, placeOf(at));
    if (typeof column === "string" && TEXTS.includes(column)) {
      texts[column] = String(cell).trim();
      continue;
    }
    const value = numberOf(cell, column, placeOf(at));
    if (isProblem(value)) return value;
    if (typeof column === "string") numbers[column] = value;
    else solutes.push([column.solute, value]);
  }
  return { numbers, texts, solutes };
}
