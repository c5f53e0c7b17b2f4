import { columnName } from "../../src/workbook/address";
import type { CellBlock, Contents } from "../host";
import { asReadAgain, asText } from "../office/cellContent";

type Cells = CellBlock["formulas"][number];

/** A kind of sheet that keeps what the user said, an entry to a row, beneath a mark and headers. */
export interface KeptSheet {
  /** In the first cell, in every language: so that the sheet is found again whatever it is called. */
  readonly mark: string;
  readonly columns: number;
  readonly keyOf: (cells: Cells) => string;
}

/** One entry as it is to stand on the sheet. */
export interface KeptRow {
  readonly key: string;
  /** Null: the row stays where there is one, and none is added. */
  readonly cells: readonly string[] | null;
  /** Whether a row that is there says it already. */
  readonly isSaidBy: (cells: Cells) => boolean;
}

const FIRST_ROW = 2;

export const isOfKind = ({ mark }: KeptSheet, { formulas, top, left }: CellBlock): boolean =>
  top === 0 && left === 0 && formulas[0]?.[0] === mark;

const added = (rows: readonly KeptRow[]): string[][] =>
  rows.flatMap(({ cells }) => (cells === null ? [] : [cells.map(asText)]));

/** The whole sheet, when there is none yet. */
export const newContents = (
  { mark }: KeptSheet,
  headers: readonly string[],
  rows: readonly KeptRow[],
): Contents => [[mark], [...headers], ...added(rows)];

const kept = (cells: Cells): (string | number)[] => cells.map(asReadAgain);

/**
 * The columns of a sheet that is there, brought up to date: a row stays in its place, one that was taken back is
 * blanked, new ones follow. `block` reaches down beneath all filled rows by as many as may be added.
 */
export function updatedContents(
  kind: KeptSheet,
  block: CellBlock,
  rows: readonly KeptRow[],
): Contents {
  const wanted = new Map(rows.map((row) => [row.key, row]));
  const standing = block.formulas.slice(FIRST_ROW).map((cells) => {
    const key = kind.keyOf(cells);
    const row = wanted.get(key);
    wanted.delete(key);
    if (cells[0] === "" || row?.isSaidBy(cells) === true) return kept(cells);
    return row?.cells?.map(asText) ?? new Array<string>(kind.columns).fill("");
  });
  // Beneath all that stood there: beside a row that was blanked may be someone's own note.
  const news = added([...wanted.values()]);
  standing.splice(standing.length - added(rows).length, news.length, ...news);
  return [...block.formulas.slice(0, FIRST_ROW).map(kept), ...standing];
}

/** "A1:E12": the rows that are filled and as many more as could be added. */
export const keptAddress = (
  { columns }: KeptSheet,
  filledRows: number,
  rows: readonly KeptRow[],
): string => `A1:${columnName(columns - 1)}${Math.max(filledRows, FIRST_ROW) + added(rows).length}`;
