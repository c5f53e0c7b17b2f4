import { normalName } from "../../src/catalogue/normalName";
import type { Cell, Matrix } from "../../src/foundation/cell";

const key = (cell: Cell | undefined): string => (typeof cell === "string" ? normalName(cell) : "");

/** Own ingredients with one more row of them, in place of the row of that name. Header rows first. */
export function mergeOwn(own: Matrix | null, added: Matrix): Matrix {
  const [headers = [], ...rows] = own ?? [];
  const [addedHeaders = [], ...addedRows] = added;
  const known = headers.map(key);
  const all = [...headers, ...addedHeaders.filter((header) => !known.includes(key(header)))];
  const laidOut = (from: readonly Cell[], row: readonly Cell[]) =>
    all.map((header): Cell => row[from.map(key).indexOf(key(header))] ?? null);
  const nameAt = all.map(key).indexOf("name");
  const fresh = addedRows.map((row) => laidOut(addedHeaders, row));
  const replaced = new Set(fresh.map((row) => key(row[nameAt])));
  const kept = rows
    .map((row) => laidOut(headers, row))
    .filter((row) => !replaced.has(key(row[nameAt])));
  return [all, ...kept, ...fresh];
}
