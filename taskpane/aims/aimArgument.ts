import type { Cell, Matrix } from "../../src/foundation/cell";
import { sheetRange } from "../bowl/sheetRange";
import type { Aim, AimBody } from "./aim";
import { AIM_HEADERS } from "./aimTables";

/** A target in the order of AIM_HEADERS. */
export const aimRow = ({ name, temperatureC, iceFrom, iceTo, basis, note }: AimBody) =>
  [name, temperatureC, iceFrom, iceTo, basis, note] as const;

/** A target as RIME.CHECK takes it: the catalogue's by its name, an own one as a table of one row. */
export const aimArgument = (aim: Aim): Cell | Matrix =>
  aim.obtained === "own" ? [AIM_HEADERS, aimRow(aim)] : aim.name;

const quoted = (text: string): string => `"${text.replace(/"/g, '""')}"`;

const constant = (row: readonly (string | number)[]): string =>
  row.map((cell) => (typeof cell === "number" ? String(cell) : quoted(cell))).join(",");

/**
 * The formula by which a cell compares a mix with a target. `call` writes RIME.CHECK with the argument for the
 * target. A table on a sheet is handed over whole, so that the cell follows it, and its row's answer picked.
 */
export function checkFormula(aim: Aim, call: (target: string) => string): string {
  if (aim.obtained !== "own") return call(quoted(aim.name));
  const { place } = aim;
  if (place === null) return call(`{${constant(AIM_HEADERS)};${constant(aimRow(aim))}}`);
  return `INDEX(${call(sheetRange(place.sheet, place.address))},${place.row})`;
}
