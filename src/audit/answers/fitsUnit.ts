import type { WorkbookCell } from "../../workbook/model";
import { unitFromWord } from "../recipes/amounts/unit";
import type { ResultRole } from "./resultRole";

const IN_QUOTES = /"\s*([^"]*?)\s*"/;
const OF_TEMPERATURE = /^(°\s?[cf]?|k|kelvin|celsius|fahrenheit|degrees?|grad)$/i;
const OF_SHARE = /^(%|per ?cent\b|prozent\b)/i;

/** What a number format shows behind the number: a word in quotes, or the percent sign that makes it a share. */
function unitShown({ format = "" }: WorkbookCell): string {
  const [, quoted] = IN_QUOTES.exec(format) ?? [];
  return quoted ?? (/%/.test(format.replace(/\\./g, "")) ? "%" : "");
}

/** Whether the unit beside a cell or in its format may be that of an answer: a temperature is never in % or g, a share never in °C. */
export function fitsUnit(role: ResultRole, beside: string, cell: WorkbookCell): boolean {
  return [beside.trim(), unitShown(cell)].every((unit) => {
    if (OF_TEMPERATURE.test(unit)) return role === "freezing point" || role === "depression";
    const isOther = OF_SHARE.test(unit) || unitFromWord(unit) !== null;
    return !isOther || role === "ice fraction" || (role === "molality" && !OF_SHARE.test(unit));
  });
}
