import type { WorkbookSheet } from "../../workbook/model";
import type { FahrenheitCell } from "./fahrenheitCells";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { fahrenheitToC } from "../answers/resultLabel";

export const CELSIUS = /°\s?c\b|celsius|\bdeg\.? ?c\b/i;

/** A log has at least so many readings; of a longer one the first are read. */
const LEAST_READINGS = 4;
const MOST_READINGS = 2000;
/** A freezer keeps its temperature within so many kelvins most of the time. */
const LARGEST_SPREAD_K = 11;
/** More foreign readings than this share are another freezer's, or another time's. */
const MOST_FOREIGN = 0.15;
/** At least this share is about as cold as the others: of four readings three. */
const LEAST_USUAL = 0.75;
/** Fewer say less about how cold it may be: what is read as °F may lie farther outside them, in K. */
const MANY_READINGS = 10;
/** A reading is foreign when it lies so far outside all others. */
const OUTSIDE_K = 3;

interface Reading extends Place {
  readonly value: number;
}

/** "Door left open", "nach dem Abtauen": a remark in the row says why it was warm. */
const WHY_WARM =
  /door|open|defrost|thaw|power|failure|outage|off\b|warm|load|tür|offen|abtau|abgetaut|strom|ausfall|beladen|befüllt|neu\b/i;

/** "n/a", "–", "defekt": what is written where there is no reading. */
const NO_READING = /^([-–—?x.]+|n\.?\/?a\.?|none|off|broken|missing|defekt|kaputt|fehlt|aus)$/i;

const isExplained = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  [1, 2, 3, 4].some((step) => WHY_WARM.test(textAt(sheet, row, column + step)));

/** Nothing stands about the column of a log: what follows may be another table. */
const isBlankRow = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  [-1, 0, 1].every((step) => (sheet.cellAt(row, column + step)?.value ?? null) === null);

/** After a blank row a log goes on with at least two readings, as one in groups of a day each does. */
const goesOn = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  [1, 2].every((step) => typeof sheet.cellAt(row + step, column)?.value === "number");

function readingsBelow(sheet: WorkbookSheet, header: number, column: number): Reading[] {
  const readings: Reading[] = [];
  const last = Math.min(sheet.rowCount - 1, header + MOST_READINGS);
  for (let row = header + 1; row <= last; row += 1) {
    const value = sheet.cellAt(row, column)?.value ?? null;
    if (typeof value === "string" && !NO_READING.test(value.trim())) break;
    if (isBlankRow(sheet, row, column) && !goesOn(sheet, row, column)) break;
    if (typeof value === "number" && !isExplained(sheet, row, column))
      readings.push({ row, column, value });
  }
  return readings;
}

/** The readings right of a label, day by day. */
function readingsBeside(sheet: WorkbookSheet, row: number, label: number): Reading[] {
  const readings: Reading[] = [];
  for (let column = label + 1; column < sheet.columnCount; column += 1) {
    const value = sheet.cellAt(row, column)?.value ?? null;
    if (typeof value === "number") readings.push({ row, column, value });
    else if (value !== null && !NO_READING.test(textAt(sheet, row, column))) break;
  }
  return readings;
}

/** The one or few readings below 0 °C that are at home among the others only when they are read as °F. */
function foreignIn(readings: readonly Reading[]): readonly Reading[] {
  const sorted = readings.map(({ value }) => value).sort((one, other) => one - other);
  const median = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const usual = readings.filter(({ value }) => Math.abs(value - median) <= LARGEST_SPREAD_K / 2);
  if (
    readings.length < LEAST_READINGS ||
    median > -5 ||
    usual.length < LEAST_USUAL * readings.length
  )
    return [];
  const margin = readings.length < MANY_READINGS ? 3 : 2;
  const isForeign = ({ value }: Reading) => {
    const others = usual.map((one) => one.value).filter((one) => one !== value);
    const [least, most] = [Math.min(...others), Math.max(...others)];
    const celsius = fahrenheitToC(value);
    return value > most + OUTSIDE_K && celsius >= least - margin && celsius <= most + margin;
  };
  const foreign = readings.filter(isForeign);
  return foreign.length <= Math.max(1, MOST_FOREIGN * readings.length) ? foreign : [];
}

/** A title that says °C for a whole log stands at most so many rows above its headings. */
const TITLE_ABOVE = 4;

/** Whether a heading is in °C: by its own words, by its first number's format, or by the title of the log. */
function isInCelsius(sheet: WorkbookSheet, row: number, column: number): boolean {
  if (CELSIUS.test(textAt(sheet, row, column))) return true;
  const first = sheet.cellAt(row + 1, column) ?? sheet.cellAt(row, column + 1);
  if (typeof first?.value !== "number") return false;
  if (CELSIUS.test(first.format ?? "")) return true;
  const { columnsByRow } = sheetTexts(sheet);
  return Array.from({ length: TITLE_ABOVE }, (_, step) => row - step - 1).some((above) =>
    columnsByRow.get(above)?.some((at) => CELSIUS.test(textAt(sheet, above, at))),
  );
}

/** Readings in °F in a column or a row in °C, as a log of a freezer has them; one that is in both is told once. */
export function loggedInFahrenheit(sheet: WorkbookSheet): FahrenheitCell[] {
  const foreign = [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns
      .filter((column) => isInCelsius(sheet, row, column))
      .flatMap((column) => [
        ...foreignIn(readingsBelow(sheet, row, column)),
        ...foreignIn(readingsBeside(sheet, row, column)),
      ]),
  );
  const byPlace = new Map(foreign.map((one) => [`${one.row},${one.column}`, one]));
  return [...byPlace.values()].map(({ value, ...place }) => ({
    ...place,
    temperatureF: value,
    isMarked: false,
  }));
}
