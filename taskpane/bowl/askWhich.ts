import type { CellBlock } from "../host";
import type { AmountColumn } from "./amountColumns";
import { textAt, type Lattice } from "./lattice";
import type { ColumnOffer, ColumnQuestion } from "./recognised";

/** "B, Grams": the letter of a column or the number of a row, and what stands at its head. */
function offersOf(lattice: Lattice, headerRow: number): readonly ColumnOffer[] {
  return Array.from({ length: lattice.columnCount }, (_, index) => {
    const cell = lattice.nameOf(0, index);
    const place = lattice.direction === "down" ? cell.replace(/\d+/, "") : cell.replace(/\D+/, "");
    const header = textAt(lattice, Math.max(headerRow, 0), index);
    return { index, label: header === "" ? place : `${place}, ${header}` };
  });
}

/** The question to the user when headers do not decide. */
export function askWhich(
  block: CellBlock,
  lattice: Lattice,
  headerRow: number,
  found: { readonly names: number; readonly pool: readonly AmountColumn[] },
  why: ColumnQuestion["why"],
): ColumnQuestion {
  return {
    kind: "question",
    sheet: block.sheet,
    address: block.address,
    why,
    direction: lattice.direction,
    columns: offersOf(lattice, headerRow),
    guess: { names: found.names, amounts: found.pool[0]?.column ?? null },
  };
}
