import { formatMeaning, headerMeaning, titleMeaning, type ColumnMeaning } from "./columnHeader";
import { isNumberLike, textAt, type Lattice } from "./lattice";

/** A column of numbers beside the names, and what its header or format says they are. */
export interface AmountColumn {
  readonly column: number;
  readonly header: string;
  readonly meaning: ColumnMeaning;
  readonly origin: "header" | "number format";
}

function meaningOf(lattice: Lattice, header: string, column: number, firstRow: number) {
  const fromHeader = lattice.direction === "down" ? headerMeaning(header) : titleMeaning(header);
  const said =
    fromHeader.role === "amount" ? fromHeader.unit !== null : fromHeader.role === "other";
  if (said) return { meaning: fromHeader, origin: "header" as const };
  const fromFormat = formatMeaning(lattice.format(firstRow, column));
  if (fromFormat.role === "unsaid") return { meaning: fromHeader, origin: "header" as const };
  return { meaning: fromFormat, origin: "number format" as const };
}

/**
 * Columns whose cells beside the known names are numbers. A single recipe has one beside at least half of
 * them; where many recipes share their names, most of these stay blank in each.
 */
export function amountColumns(
  lattice: Lattice,
  headerRow: number,
  names: { readonly column: number; readonly knownRows: readonly number[] },
): readonly AmountColumn[] {
  const found: AmountColumn[] = [];
  for (let column = 0; column < lattice.columnCount; column += 1) {
    if (column === names.column) continue;
    const rows = names.knownRows.filter((row) => isNumberLike(lattice.value(row, column)));
    const [firstRow] = rows;
    if (firstRow === undefined) continue;
    const header = headerRow < 0 ? "" : textAt(lattice, headerRow, column);
    const meaning = meaningOf(lattice, header, column, firstRow);
    const filled = names.knownRows.filter((row) => lattice.value(row, column) !== "");
    const isSparse = lattice.direction === "across" || meaning.meaning.role === "amount";
    const expected = isSparse ? filled.length : names.knownRows.length;
    if (rows.length * 2 >= expected) found.push({ column, header, ...meaning });
  }
  return found;
}

const unitOf = ({ meaning }: AmountColumn): string | null =>
  meaning.role === "amount" ? meaning.unit : null;

/**
 * The columns that may be meant as amounts, narrowed as far as headers allow: grams before other masses,
 * these before other units, these before a bare "amount", this before numbers of which nothing is said.
 */
export function likelyAmounts(columns: readonly AmountColumn[]): readonly AmountColumn[] {
  const pools = [
    columns.filter((column) => unitOf(column) === "g"),
    columns.filter((column) => ["kg", "mg", "oz", "lb"].includes(unitOf(column) ?? "")),
    columns.filter((column) => unitOf(column) !== null),
    columns.filter(({ meaning }) => meaning.role === "amount"),
    columns.filter(({ meaning }) => meaning.role === "unsaid"),
  ];
  return pools.find((pool) => pool.length > 0) ?? [];
}
