import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { runs, sheetTexts } from "../recipes/sheetTexts";
import type { FahrenheitCell } from "./fahrenheitCells";
import { foreignReadings, type Reading } from "./foreignReadings";
import { readingsBelow, saysCelsius } from "./loggedTemperatures";

/** Longer columns tell by themselves. */
const LONGEST = 3;
/** What cools is so much warmer at first, in K. */
const COOLED_K = 2;

/** A reading in °F is so much warmer than those above and below it, in K; less is how its place differs from others. */
const APART_K = 6;

/** Whether a reading is far from the others under its heading. */
function isApart(columns: readonly (readonly Reading[])[], one: Reading): boolean {
  const own = columns.find((readings) => readings.includes(one)) ?? [];
  return own.every((other) => other === one || one.value - other.value >= APART_K);
}

/** Whether the columns beside a first reading are warmer at first, too: then something was cooled. */
function isOfCooling(columns: readonly (readonly Reading[])[], one: Reading): boolean {
  const own = columns.find((readings) => readings.includes(one));
  const others = columns.filter((readings) => readings !== own);
  const cools = ([first, next]: readonly Reading[]) =>
    first !== undefined && next !== undefined && first.value > next.value + COOLED_K;
  return own?.[0] === one && others.every(cools);
}

function foreignAmong(columns: readonly (readonly Reading[])[]): readonly Reading[] {
  if (columns.length < 2 || columns.some(({ length }) => length < 2 || length > LONGEST)) return [];
  const [one, ...more] = foreignReadings(columns.flat(), false);
  if (one === undefined || more.length > 0) return [];
  return isApart(columns, one) && !isOfCooling(columns, one) ? [one] : [];
}

/**
 * The one reading in °F in a table with a few readings under each of several headings in °C, as of a freezer at opening
 * and at closing, at its top and its bottom: together they tell how cold it is.
 */
export function tablesInFahrenheit(sheet: WorkbookSheet): FahrenheitCell[] {
  const tables = [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) => {
    const isOfReadings = (column: number) =>
      saysCelsius(sheet, row, column) &&
      headerRole(textAt(sheet, row, column)) !== "freezing point";
    return runs(columns.filter(isOfReadings), 0).map((table) =>
      table.map((column) => readingsBelow(sheet, row, column)),
    );
  });
  return tables
    .flatMap(foreignAmong)
    .map(({ value, ...place }) => ({ ...place, temperatureF: value, isMarked: false }));
}
