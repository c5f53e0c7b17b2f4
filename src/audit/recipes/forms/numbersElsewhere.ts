import { parseCellName } from "../../../workbook/address";
import type { Workbook } from "../../../workbook/model";

const ELSEWHERE =
  /(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!(\$?[A-Z]{1,3}\$?\d{1,7})(?![\w(!:.])/giu;

/** A formula in which the numbers that it reads one by one from other sheets stand themselves: constants of a term. */
export function withNumbersOf({ sheets }: Workbook, formula: string): string {
  if (!formula.includes("!")) return formula;
  return formula.replaceAll(ELSEWHERE, (all, quoted?: string, plain?: string, cell = "") => {
    const name = (quoted?.replaceAll("''", "'") ?? plain ?? "").toLowerCase();
    const sheet = sheets.find((one) => one.name.toLowerCase() === name);
    const place = parseCellName(String(cell).replaceAll("$", ""));
    const value = place === null ? undefined : sheet?.cellAt(place.row, place.column)?.value;
    return typeof value === "number" && value >= 0 ? String(value) : all;
  });
}
