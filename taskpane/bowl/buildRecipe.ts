import type { CellBlock } from "../host";
import type { AmountColumn } from "./amountColumns";
import { isPlainAmount, isUnitHeader, isUnitWord } from "./columnHeader";
import { textAt, type Lattice } from "./lattice";
import type { NameColumn } from "./nameColumns";
import type { ColumnChoice, RecipeLine, RecognisedRecipe, UnitOrigin } from "./recognised";
import { isTotalName, recipeRows } from "./recipeRows";

export interface FoundParts {
  readonly block: CellBlock;
  readonly lattice: Lattice;
  readonly headerRow: number;
  readonly names: NameColumn;
  readonly amounts: AmountColumn;
  readonly isKnown: (name: string) => boolean;
  readonly choice: ColumnChoice | null;
}

/** The column that gives each row's unit: by its header, or because most of it is units. */
function unitColumn({ lattice, headerRow, names, amounts }: FoundParts, rows: readonly number[]) {
  for (let column = 0; column < lattice.columnCount; column += 1) {
    if (column === names.column || column === amounts.column) continue;
    if (headerRow >= 0 && isUnitHeader(textAt(lattice, headerRow, column))) return column;
    const units = rows.filter((row) => isUnitWord(textAt(lattice, row, column)));
    if (units.length > 0 && units.length * 2 >= rows.length) return column;
  }
  return null;
}

interface UnitFinding {
  readonly unit: string;
  readonly unitOrigin: UnitOrigin;
  readonly unitAt: (row: number) => string;
}

function findUnit(parts: FoundParts, rows: readonly number[]): UnitFinding {
  const { amounts, lattice, choice } = parts;
  const same = (unit: string, unitOrigin: UnitOrigin) => ({ unit, unitOrigin, unitAt: () => unit });
  if (choice !== null && choice.unit !== null) return same(choice.unit, "chosen");
  const said = amounts.meaning.role === "amount" ? amounts.meaning.unit : null;
  if (said !== null) return same(said, amounts.origin);
  const column = unitColumn(parts, rows);
  if (column === null) return same("g", "assumed");
  const unitAt = (row: number) => textAt(lattice, row, column);
  return { unit: "mixed", unitOrigin: "unit column", unitAt };
}

/** The text above the header, else what the amounts' header says besides a unit, else the address. */
function titleOf({ block, lattice, headerRow, amounts }: FoundParts): string {
  for (let row = 0; row < headerRow; row += 1) {
    for (let column = 0; column < lattice.columnCount; column += 1) {
      const text = textAt(lattice, row, column);
      if (text !== "") return text;
    }
  }
  const named = amounts.header.replace(/[([][^)\]]*[)\]]/g, "").trim();
  return isPlainAmount(named) ? `${block.sheet}!${block.address}` : named;
}

function rangeOf(lattice: Lattice, rows: readonly number[], column: number): string {
  const [first, last] = [
    lattice.nameOf(rows[0] ?? 0, column),
    lattice.nameOf(rows.at(-1) ?? 0, column),
  ];
  return first === last ? first : `${first}:${last}`;
}

const textsBeside = (lattice: Lattice, column: number): readonly string[] =>
  Array.from({ length: lattice.rowCount }, (_, row) => textAt(lattice, row, column)).filter(
    (text) => text !== "",
  );

/** The recipe as found, with what was taken for what. */
export function buildRecipe(parts: FoundParts): RecognisedRecipe {
  const { block, lattice, headerRow, names, amounts, isKnown } = parts;
  const { rows, leftOut } = recipeRows(lattice, headerRow, names, amounts.column);
  const { unit, unitOrigin, unitAt } = findUnit(parts, rows);
  const lines = rows.map((row): RecipeLine => {
    const name = lattice.value(row, names.column);
    const text = textAt(lattice, row, names.column);
    return {
      name,
      amount: lattice.value(row, amounts.column),
      unit: unitAt(row),
      cell: lattice.nameOf(row, names.column),
      amountCell: lattice.nameOf(row, amounts.column),
      known: text === "" || isTotalName(text) || isKnown(text),
    };
  });
  return {
    kind: "recipe",
    sheet: block.sheet,
    title: titleOf(parts),
    direction: lattice.direction,
    lines,
    nameRange: rangeOf(lattice, rows, names.column),
    amountRange: rangeOf(lattice, rows, amounts.column),
    amountHeader: amounts.header,
    unit,
    unitOrigin,
    texts: textsBeside(lattice, amounts.column),
    leftOut: leftOut.map((row) => ({
      cell: lattice.nameOf(row, names.column),
      text: String(lattice.value(row, names.column)),
    })),
  };
}
