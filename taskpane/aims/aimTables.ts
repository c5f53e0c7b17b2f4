import { normalName } from "../../src/catalogue/normalName";
import type { Cell, Matrix } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import { ownTargetRows } from "../../src/worksheet/ownTargetRows";
import { headedRanges } from "../bowl/headedRanges";
import type { OwnRange } from "../bowl/ownIngredients";
import { ownAim, type Aim } from "./aim";
import type { Workbook } from "../../src/workbook/model";

/** The headers by which RIME.CHECK knows a table of targets; the note is the pane's own. */
export const AIM_HEADERS = ["name", "temperature", "ice from", "ice to", "basis", "note"] as const;
export type AimHeader = (typeof AIM_HEADERS)[number];
const REQUIRED = AIM_HEADERS.slice(0, 4);

/** A table of targets as it stands on a sheet, headers first. */
export interface AimTable extends OwnRange {
  readonly cells: Matrix;
}

const textOf = (cell: Cell | undefined): string =>
  cell === null || cell === undefined || isProblem(cell) ? "" : String(cell);

/** A header as RIME.CHECK reads it: without a unit in brackets. */
const headerOf = (text: string): string => normalName(text).replace(/\s*[([].*[)\]]$/, "");

/** The column of each header. */
export const aimColumns = (headers: readonly (Cell | undefined)[] = []) =>
  new Map(headers.map((header, column) => [headerOf(textOf(header)), column]));

/** Every range of the workbook that is headed as RIME.CHECK wants its targets headed. */
export const findAimTables = (workbook: Workbook): readonly OwnRange[] =>
  headedRanges(workbook, (headers) => {
    const columns = aimColumns(headers);
    return REQUIRED.every((header) => columns.has(header));
  });

/** A row of a table: a target, or the sentence with which RIME.CHECK refuses it. */
export type AimRow = Aim | { readonly refused: string };

/** The rows of a table, as RIME.CHECK takes them. */
export function aimRows({ sheet, address, cells }: AimTable): readonly AimRow[] {
  const noteAt = aimColumns(cells[0]).get("note") ?? -1;
  return ownTargetRows(cells).map((target, at): AimRow => {
    if (isProblem(target)) return { refused: target.message };
    const note = textOf(cells[at + 1]?.[noteAt]);
    return ownAim({ ...target, note }, { sheet, address, row: at + 1 });
  });
}
