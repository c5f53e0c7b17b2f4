import type { WorkbookSheet } from "../../workbook/model";
import type { FahrenheitCell } from "./fahrenheitCells";
import { CELSIUS } from "./loggedTemperatures";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { plainWords } from "../recipes/headings/plainWords";
import type { Place } from "../recipes/recipeBlock";
import { temperatureWords } from "../recipes/roles/temperatureWords";
import { fahrenheitToC } from "../answers/resultLabel";

/** What is eaten frozen is served below 0 °C. */
export const WARMEST_SERVED_C = -0.5;
export const WARMEST_SERVED_F = 25;
/** Among other servings one in °F would be at home in °C, within so much. */
const ABOUT_K = 4;
const MOST_SERVINGS = 50;

const numberAt = (sheet: WorkbookSheet, { row, column }: Place): number | null => {
  const value = sheet.cellAt(row, column)?.value;
  return typeof value === "number" ? value : null;
};

/** The first numbers to the right of a label, or right below a heading. */
function numbersFrom(sheet: WorkbookSheet, { row, column }: Place, isDown: boolean): Place[] {
  const at = (step: number): Place =>
    isDown ? { row: row + step, column } : { row, column: column + step };
  const first = (isDown ? [1] : [1, 2, 3]).find((step) => numberAt(sheet, at(step)) !== null);
  const places: Place[] = [];
  for (let step = first ?? 0; step > 0 && step <= MOST_SERVINGS; step += 1) {
    if (numberAt(sheet, at(step)) === null) break;
    places.push(at(step));
  }
  return places;
}

const isInCelsius = (sheet: WorkbookSheet, label: string, { row, column }: Place): boolean =>
  [label, textAt(sheet, row, column + 1), sheet.cellAt(row, column)?.format ?? ""].some((text) =>
    CELSIUS.test(text),
  );

/** One warm number among frozen ones, or alone; several warm ones are sauces and cakes. */
function warmAmong(sheet: WorkbookSheet, places: readonly Place[]): Place | null {
  const isWarm = (place: Place) => (numberAt(sheet, place) ?? 0) > WARMEST_SERVED_C;
  const [warm, ...more] = places.filter(isWarm);
  const value = warm === undefined ? null : numberAt(sheet, warm);
  if (warm === undefined || more.length > 0 || value === null || value > WARMEST_SERVED_F)
    return null;
  const others = places.flatMap((place) => (isWarm(place) ? [] : (numberAt(sheet, place) ?? [])));
  const celsius = fahrenheitToC(value);
  const isAtHome =
    celsius >= Math.min(...others) - ABOUT_K && celsius <= Math.max(...others) + ABOUT_K;
  return others.length === 0 || isAtHome ? warm : null;
}

/** "Serving temperature (°C)" with 10 beside or below it, alone or among others: what is ice is not served so. */
export function servedInFahrenheit(
  sheet: WorkbookSheet,
  label: Place,
  text: string,
): readonly FahrenheitCell[] {
  if (headerRole(text) !== "temperature" || !temperatureWords.ofServing.test(plainWords(text)))
    return [];
  for (const isDown of [false, true]) {
    const places = numbersFrom(sheet, label, isDown);
    const [first] = places;
    if (first === undefined || !isInCelsius(sheet, text, first)) continue;
    const warm = warmAmong(sheet, places);
    const temperatureF = warm === null ? null : numberAt(sheet, warm);
    return warm === null || temperatureF === null
      ? []
      : [{ ...warm, temperatureF, isMarked: false }];
  }
  return [];
}
