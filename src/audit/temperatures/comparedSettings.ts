import { cellName } from "../../workbook/address";
import { eachFormula } from "../../workbook/eachFormula";
import type { WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import { textAt } from "../recipes/cells";
import { nextColumn } from "../recipes/nextFilled";
import { sheetTexts } from "../recipes/sheetTexts";
import { fahrenheitToC } from "../answers/resultLabel";
import type { FahrenheitCell } from "./fahrenheitCells";
import { foreignReadings, type Reading } from "./foreignReadings";
import { CELSIUS } from "./loggedTemperatures";

/** Ice is colder than this, in °C, and what is said of it in °F no warmer than this is in °C. */
const WARMEST_C = -6;
/** Beyond so many labels a sheet is a ledger. */
const MOST_SETTINGS = 20;
const LONGEST = 80;
const MOST_READINGS = 60;

/** Numbers typed beside labels in °C that are too warm for ice, unless they are in °F. */
function warmSettings(sheet: WorkbookSheet): Reading[] {
  return [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((label) => {
      if (!CELSIUS.test(textAt(sheet, row, label))) return [];
      const column = nextColumn(sheet, row, label);
      const cell = sheet.cellAt(row, column);
      const value = cell?.formula === undefined ? cell?.value : null;
      const isWarm =
        typeof value === "number" && value > WARMEST_C && fahrenheitToC(value) <= WARMEST_C;
      return isWarm ? [{ row, column, value }] : [];
    }),
  );
}

/** The typed numbers from which formulas subtract a cell, or the other way round: what is compared with it. */
function comparedWith(sheet: WorkbookSheet, { row, column }: Reading): Reading[] {
  const written = cellName(row, column).replace(/(?=\d)/, "\\$?");
  const subtracted = new RegExp(`-\\s*\\$?${written}(?!\\d)|(?<![A-Z$])\\$?${written}\\s*-`, "i");
  const compared = new Map<string, Reading>();
  eachFormula(sheet, (_row, _column, { formula = "" }) => {
    if (formula.length > LONGEST || compared.size >= MOST_READINGS) return;
    if (!subtracted.test(formula)) return;
    for (const { range, sheet: other } of referencesOf(formula)) {
      if (other !== null || (range.top === row && range.left === column)) continue;
      for (let at = range.top; at <= Math.min(range.bottom, range.top + MOST_READINGS); at += 1) {
        const value = sheet.cellAt(at, range.left)?.value;
        if (typeof value === "number")
          compared.set(`${at},${range.left}`, { row: at, column: range.left, value });
      }
    }
  });
  return [...compared.values()];
}

/** What is wanted, or set, in °F where formulas compare it with readings that tell so: "Too warm by" = reading − wanted. */
export function comparedInFahrenheit(sheet: WorkbookSheet): FahrenheitCell[] {
  const settings = warmSettings(sheet);
  if (settings.length > MOST_SETTINGS) return [];
  return settings.flatMap((setting) => {
    const { value, ...place } = setting;
    const isForeign = foreignReadings([setting, ...comparedWith(sheet, setting)], false).includes(
      setting,
    );
    return isForeign ? [{ ...place, temperatureF: value, isMarked: false }] : [];
  });
}
