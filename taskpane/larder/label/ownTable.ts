import { normalName } from "../../../src/catalogue/normalName";
import type { Matrix } from "../../../src/foundation/cell";
import { cellName, rangeName } from "../../../src/workbook/address";
import { ownHeaderMeaning } from "../../../src/worksheet/ownHeaderMeaning";
import { toMatrix } from "../../bowl/cells";
import type { BlockValue, CellBlock, SheetEdit } from "../../host";
import type { OwnRow } from "./readLabel";

/** A row on its way into a range of own ingredients. */
export interface OwnPlan {
  readonly edits: readonly SheetEdit[];
  readonly sheet: string;
  /** The range with the row in it, A1. */
  readonly address: string;
  /** The range as it would be then. */
  readonly matrix: Matrix;
}

export type OwnTrouble = "named" | "below" | "beside";

const meaning = (header: BlockValue | undefined): string | null =>
  typeof header === "string" ? ownHeaderMeaning(header) : null;

/** For each part of the row its column: one that is there, else the next one beside the range. */
function columnsFor(headers: readonly BlockValue[], row: OwnRow) {
  const meanings = headers.map(meaning);
  let next = headers.length;
  return row.map(([header]) => {
    const there = meanings.indexOf(meaning(header));
    return there >= 0 ? there : (next += 1) - 1;
  });
}

/**
 * Puts a row beneath a range of own ingredients, with new columns beside it for what it has no column for.
 * `block` is the range, one row further down and as many columns further right as the row has parts; `width`
 * are the range's own columns. `headerFor` writes a new column's header.
 */
export function planRow(
  block: CellBlock,
  width: number,
  row: OwnRow,
  headerFor: (header: string) => string,
): OwnPlan | OwnTrouble {
  const { sheet, top, left, values, formulas } = block;
  const headers = (values[0] ?? []).slice(0, width);
  const nameAt = headers.findIndex((header) => meaning(header) === "name");
  const bottom = values.length - 1;
  const columns = columnsFor(headers, row);
  const name = normalName(String(row[0]?.[1] ?? ""));
  if (values.some((cells, at) => at > 0 && normalName(String(cells[nameAt])) === name))
    return "named";
  const grown = Math.max(width, ...columns.map((column) => column + 1));
  const isBlank = (cells: readonly BlockValue[] = []) => cells.every((cell) => cell === "");
  if (!isBlank(formulas[bottom]?.slice(0, width))) return "below";
  if (!formulas.every((cells) => isBlank(cells.slice(width, grown)))) return "beside";
  const future = values.map((cells) => cells.slice(0, grown));
  const edits: SheetEdit[] = [];
  const put = (down: number, along: number, to: string | number) => {
    edits.push({ sheet, cell: cellName(top + down, left + along), from: "", to });
    const cells = future[down];
    if (cells !== undefined) cells[along] = to;
  };
  for (const [at, [header]] of row.entries()) {
    const column = columns[at] ?? 0;
    if (column >= width) put(0, column, headerFor(header));
  }
  for (const [at, [, content]] of row.entries()) put(bottom, columns[at] ?? 0, content);
  const range = { top, left, bottom: top + bottom, right: left + grown - 1 };
  return { edits, sheet, address: rangeName(range), matrix: toMatrix(future) };
}

/** The same row on a sheet of its own, headers first. */
export function planSheet(
  sheet: string,
  row: OwnRow,
  headerFor: (header: string) => string,
): OwnPlan {
  const rows = [row.map(([header]) => headerFor(header)), row.map(([, content]) => content)];
  const edits = rows.flatMap((cells, down) =>
    cells.map((to, along) => ({ sheet, cell: cellName(down, along), from: "", to })),
  );
  const range = { top: 0, left: 0, bottom: 1, right: row.length - 1 };
  return { edits, sheet, address: rangeName(range), matrix: toMatrix(rows) };
}
