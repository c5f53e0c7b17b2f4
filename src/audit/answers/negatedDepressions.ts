import { parseCellName } from "../../workbook/address";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { isOneRow } from "../recipes/recipeBlock";
import type { StatedResult } from "./statedResults";

/** "=-G8", or "=G8" where the sign was forgotten. */
const LINK = /^=?\s*(-?)\s*(?:1\s*\*\s*)?\(?\$?([A-Z]{1,3})\$?(\d{1,7})\)?\s*$/i;
/** A freezing point stands at most so many columns behind its depression. */
const REACH = 3;

interface LinkedPoint {
  readonly point: StatedResult;
  readonly isNegated: boolean;
}

/** The temperature behind the depression of a solution that is the same number, with or without a sign. */
function linkedTo(depression: StatedResult): LinkedPoint[] {
  const { sheet, row, column, block } = depression;
  if (depression.role !== "depression" || !isOneRow(block) || block.headerRow === null) return [];
  const found: LinkedPoint[] = [];
  for (let at = column + 1; at <= column + REACH; at += 1) {
    const cell = sheet.cellAt(row, at);
    const [, sign, letters, digits] = LINK.exec(cell?.formula ?? "") ?? [];
    const linked = letters === undefined ? null : parseCellName(`${letters}${digits ?? ""}`);
    const label = textAt(sheet, block.headerRow, at);
    const isOfIt = linked?.row === row && linked.column === column;
    if (!isOfIt || typeof cell?.value !== "number" || headerRole(label) !== "temperature") continue;
    const point = { ...depression, role: "freezing point", label, value: cell.value } as const;
    found.push({ point: { ...point, column: at, unit: "°C" }, isNegated: sign === "-" });
  }
  return found;
}

/**
 * Freezing points under a heading that only says temperature ("T in °C"), known by that most of them are the
 * depressions beside them with a minus; those without one are told by it, too.
 */
export function negatedDepressions(results: readonly StatedResult[]): readonly StatedResult[] {
  const linked = results.flatMap(linkedTo);
  return linked
    .filter(({ point: { sheet, column } }) => {
      const alike = linked.filter(({ point }) => point.sheet === sheet && point.column === column);
      return 2 * alike.filter(({ isNegated }) => isNegated).length > alike.length;
    })
    .map(({ point }) => point);
}
