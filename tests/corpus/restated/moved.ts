import { rearranged, type Arrangement } from "./rearranged";
import type { Restated } from "./restatement";

/** Rows and columns put into a sheet: so many before the row, or the column, with this number. */
export interface Insertion {
  readonly rows?: { readonly before: number; readonly count: number };
  readonly columns?: { readonly before: number; readonly count: number };
}

export type InsertionIn = (sheet: string) => Insertion;

type Along = Insertion["rows"];
const after = (at: number, along: Along): number =>
  along !== undefined && at >= along.before ? at + along.count : at;
function before(at: number, along: Along): number | null {
  if (along === undefined || at < along.before) return at;
  return at < along.before + along.count ? null : at - along.count;
}

const withRoom = ({ rows, columns }: Insertion): Arrangement => ({
  to: ({ row, column }) => ({ row: after(row, rows), column: after(column, columns) }),
  from: (place) => {
    const [row, column] = [before(place.row, rows), before(place.column, columns)];
    return row === null || column === null ? null : { row, column };
  },
});

/** A book with rows and columns put into its sheets, as a spreadsheet does it: formulas follow. */
export const moved = (book: Restated, insertion: InsertionIn): Restated =>
  rearranged(book, (sheet) => withRoom(insertion(sheet)));
