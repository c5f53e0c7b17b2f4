import { parseCellName } from "../../workbook/address";
import { textAt } from "../recipes/cells";
import { headerRole, type Role } from "../recipes/headings/headerRole";
import { plainWords } from "../recipes/headings/plainWords";
import { isOneRow, type Place } from "../recipes/recipeBlock";
import type { StatedResult } from "./statedResults";

/** "=B9", the same number once more. */
const COPY = /^=?\s*\+?\(?\$?([A-Z]{1,3})\$?(\d{1,7})\)?\s*$/i;
/** A temperature stands at most so many rows below its depression. */
const REACH_DOWN = 3;
const REACH_LEFT = 4;

const IN_KELVIN = /(^|[\s([,/])(k|kelvin)[)\]]?$/i;
const IN_CELSIUS = /° ?c\b|celsius/i;
/** By how much something falls is a depression, be it in °C. */
const LOWERING =
  /senk|sink|sank|sunk|niedr|lower|depress|drop|fall|fäll|differ|unterschied|abstand|[δ∆]|delta|\b(um|by|unter|below|down|less|tiefer|weniger|shift)\b/i;

const MAY_BE_POINT = new Set<Role | null>(["temperature", "measured", "target", null]);

/** The words left of a number and the unit right of it. */
function wordsAround({ sheet }: StatedResult, { row, column }: Place): string {
  const left = Array.from({ length: REACH_LEFT }, (_, at) => textAt(sheet, row, column - 1 - at));
  return `${left.find((text) => text !== "") ?? ""} ${textAt(sheet, row, column + 1)}`.trim();
}

function copyOf(depression: StatedResult): StatedResult[] {
  const { sheet, row, column, block } = depression;
  if (depression.role !== "depression" || isOneRow(block)) return [];
  if (!IN_KELVIN.test(wordsAround(depression, depression))) return [];
  return Array.from({ length: REACH_DOWN }, (_, at) => row + 1 + at).flatMap((at) => {
    const cell = sheet.cellAt(at, column);
    const [, letters, digits] = COPY.exec(cell?.formula ?? "") ?? [];
    const source = letters === undefined ? null : parseCellName(`${letters}${digits ?? ""}`);
    if (source?.row !== row || source.column !== column) return [];
    const label = wordsAround(depression, { row: at, column });
    const isPoint =
      IN_CELSIUS.test(label) &&
      !LOWERING.test(plainWords(label)) &&
      MAY_BE_POINT.has(headerRole(label));
    if (!isPoint || typeof cell?.value !== "number") return [];
    const point = { role: "freezing point", unit: "°C", label, value: cell.value } as const;
    return { ...depression, ...point, row: at };
  });
}

/**
 * Temperatures below a depression that are the same number, though the sheet tells the one in kelvin from the other in
 * °C: "Lowered by (K) | 1.1", "Dial should show (°C) | =B9". They are freezing points without their minus.
 */
export const copiedDepressions = (results: readonly StatedResult[]): readonly StatedResult[] =>
  results.flatMap(copyOf).filter(
    // What its own words tell is an answer already.
    ({ sheet, row, column }) =>
      !results.some((one) => one.sheet === sheet && one.row === row && one.column === column),
  );
