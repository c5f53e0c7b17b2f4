import { parseRangeName, rangeName } from "../../src/workbook/address";
import { latticeOf, textAt, turned, type Lattice } from "../bowl/lattice";
import type { RecognisedRecipe } from "../bowl/recognised";
import type { SpreadsheetHost } from "../host";
import { isPriceHeader, priceBasis, type PriceBasis } from "./priceHeader";

/** So many columns beside the names (or rows below them) are looked through for prices. */
const SEARCHED = 40;
/** So many rows above the names may hold the header; across, a row's first cell, before what is reckoned of it. */
const HEAD = { down: 2, across: 20 } as const;

/** A column (or row) of prices beside a recipe. */
export interface PriceColumn {
  readonly header: string;
  /** As its header says; null when it does not, and has to be asked. */
  readonly basis: PriceBasis | null;
  /** Along the recipe's lines; null where there is none. */
  readonly prices: readonly (number | null)[];
}

/** The nearest text above the names. */
const headerOf = (lattice: Lattice, names: number, column: number): string => {
  for (let row = names - 1; row >= 0; row -= 1) {
    const text = textAt(lattice, row, column);
    if (text !== "") return text;
  }
  return "";
};

/** The columns of a block headed as prices: those from the names on first, then those before them. */
function columnsIn(
  lattice: Lattice,
  names: { readonly row: number; readonly column: number },
  rows: readonly number[],
): readonly PriceColumn[] {
  const all = Array.from({ length: lattice.columnCount }, (_, column) => column);
  const order = [...all.slice(names.column), ...all.slice(0, names.column)];
  return order.flatMap((column) => {
    const header = headerOf(lattice, names.row, column);
    if (!isPriceHeader(header)) return [];
    const prices = rows.map((row) => {
      const value = lattice.value(row, column);
      return typeof value === "number" && value >= 0 ? value : null;
    });
    return [{ header, basis: priceBasis(header), prices }];
  });
}

/** Every column (or row) of prices beside a recipe, wherever the selection is by now. Only reads. */
export async function readPriceColumns(
  host: SpreadsheetHost,
  recipe: RecognisedRecipe,
): Promise<readonly PriceColumn[]> {
  const names = parseRangeName(recipe.nameRange);
  if (names === null) return [];
  const isDown = recipe.direction === "down";
  const [first, last, beside] = isDown
    ? [names.top, names.bottom, names.left]
    : [names.left, names.right, names.top];
  const head = Math.max(first - HEAD[recipe.direction], 0);
  const from = Math.max(beside - SEARCHED, 0);
  const to = beside + SEARCHED;
  const range = isDown
    ? { top: head, bottom: last, left: from, right: to }
    : { left: head, right: last, top: from, bottom: to };
  const block = latticeOf(await host.read(recipe.sheet, rangeName(range)));
  const rows = recipe.lines.map(({ cell }) => {
    const place = parseRangeName(cell);
    return (isDown ? (place?.top ?? 0) : (place?.left ?? 0)) - head;
  });
  const place = { row: first - head, column: beside - from };
  return columnsIn(isDown ? block : turned(block), place, rows);
}
