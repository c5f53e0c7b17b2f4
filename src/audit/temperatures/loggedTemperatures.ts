import type { WorkbookSheet } from "../../workbook/model";
import type { FahrenheitCell } from "./fahrenheitCells";
import { massIn } from "../recipes/amounts/unit";
import { textAt } from "../recipes/cells";
import { headerRole, type Role } from "../recipes/headings/headerRole";
import { plainWords } from "../recipes/headings/plainWords";
import { nextRow } from "../recipes/nextFilled";
import { temperatureWords } from "../recipes/roles/temperatureWords";
import { sheetTexts } from "../recipes/sheetTexts";
import { foreignInFridge } from "./foreignInFridge";
import { thawedBetween } from "./thawedBetween";
import { foreignReadings, type Reading } from "./foreignReadings";

export const CELSIUS = /°\s?c\b|celsius|\bdeg\.? ?c\b/i;

/** Of a longer log the first readings are read. */
const MOST_READINGS = 2000;

/** "Door left open", "nach dem Abtauen": a remark in the row says why it was warm. */
const WHY_WARM =
  /door|\b(left|stood|was|lid|hatch|wide|half) open|\bopen(ed|ing)\b|defrost|thaw|power|failure|outage|off\b|warm|load|tür|offen|abtau|abgetaut|strom|ausfall|beladen|befüllt|neu\b/i;

/** "n/a", "–", "defekt": what is written where there is no reading. */
const NO_READING = /^([-–—?x.]+|n\.?\/?a\.?|none|off|broken|missing|defekt|kaputt|fehlt|aus)$/i;

/** Whether a remark right of a reading says why it was warm. */
export const isExplained = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  [1, 2, 3, 4].some((step) => WHY_WARM.test(textAt(sheet, row, column + step)));

/** Nothing stands about the column of a log: what follows may be another table. */
const isBlankRow = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  [-1, 0, 1].every((step) => (sheet.cellAt(row, column + step)?.value ?? null) === null);

/** After blank rows a log goes on with at least two readings, as one in groups of a day each does. */
function goesOn(sheet: WorkbookSheet, row: number, column: number): boolean {
  const next = nextRow(sheet, row, [column - 1, column, column + 1]);
  return [next, next + 1].every((at) => typeof sheet.cellAt(at, column)?.value === "number");
}

/** A label that says °C of its number: not a note that something is heated to 71 °C. */
const ITS_UNIT = /(?<!\d\s?)°\s?c\b/i;
const SUMS_UP = /\b(AVERAGE|MIN|MAX|MEDIAN|COUNT)\w*\s*\(/i;

/** Whether a number below a log says something of it, or of another thing: one that sums up or whose own label is in °C. */
const isNoReading = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  SUMS_UP.test(sheet.cellAt(row, column)?.formula ?? "") ||
  [1, 2].some((step) => ITS_UNIT.test(textAt(sheet, row, column - step)));

/** The readings below a heading, as far as they are a log. */
export function readingsBelow(sheet: WorkbookSheet, header: number, column: number): Reading[] {
  const readings: Reading[] = [];
  const last = Math.min(sheet.rowCount - 1, header + MOST_READINGS);
  for (let row = header + 1; row <= last; row += 1) {
    const value = sheet.cellAt(row, column)?.value ?? null;
    if (typeof value === "string" && !NO_READING.test(textAt(sheet, row, column))) break;
    if (isBlankRow(sheet, row, column) && !goesOn(sheet, row, column)) break;
    if (isNoReading(sheet, row, column)) break;
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

/** A title that says °C for a whole log stands at most so many rows above its headings. */
const TITLE_ABOVE = 4;

const UNIT = /^\W*(°\s?c|celsius)\W*$/i;

/** What these have °C in their heading for, nobody reads off: "Ice at −10 °C (%)". */
const NO_READINGS = new Set<Role | null>(["ice fraction", "depression", "composition", "price"]);
const OF_READINGS = new Set<Role | null>(["temperature", "measured", "freezing point"]);

/** Whether the unit behind the readings of a row is °C. */
function endInCelsius(sheet: WorkbookSheet, readings: readonly Reading[]): boolean {
  const last = readings.at(-1);
  return last !== undefined && UNIT.test(textAt(sheet, last.row, last.column + 1));
}

/** "Lid end C": a last capital, which says no degrees of other numbers than a log's. */
const LAST_LETTER = /[\s,([]C\s*[)\]]?$/;

/** Whether a heading is in °C by its own words, or by its first number's format. */
export function saysCelsius(sheet: WorkbookSheet, row: number, column: number): boolean {
  const first = sheet.cellAt(row + 1, column) ?? sheet.cellAt(row, column + 1);
  const format = typeof first?.value === "number" ? (first.format ?? "") : "";
  const heading = textAt(sheet, row, column);
  return CELSIUS.test(heading) || LAST_LETTER.test(heading) || CELSIUS.test(format);
}

/** Whether a heading above a number is in °C by the title of the log. */
function isUnderCelsius(sheet: WorkbookSheet, row: number, column: number): boolean {
  const first = sheet.cellAt(row + 1, column) ?? sheet.cellAt(row, column + 1);
  if (typeof first?.value !== "number") return false;
  const { columnsByRow } = sheetTexts(sheet);
  return Array.from({ length: TITLE_ABOVE }, (_, step) => row - step - 1).some((above) =>
    columnsByRow.get(above)?.some((at) => CELSIUS.test(textAt(sheet, above, at))),
  );
}

const NEAR_K = 3;

/** Whether a freezing point above 0 °C is among the others but for its sign. */
function lostItsSign(one: Reading, readings: readonly Reading[]): boolean {
  const others = readings.filter((other) => other !== one).map(({ value }) => value);
  const isAmong =
    -one.value >= Math.min(...others) - NEAR_K && -one.value <= Math.max(...others) + NEAR_K;
  return one.value > 0 && isAmong;
}

/** What a heading says, that of a column before it where it is only its unit: "Freezer read at | °C". */
function wordsOver(sheet: WorkbookSheet, row: number, column: number): string {
  const heading = textAt(sheet, row, column);
  return UNIT.test(heading) ? `${textAt(sheet, row, column - 1)} ${heading}` : heading;
}

/** Whether each reading stands beside a mass of its own, as of baths that differ: they are no course of one thing. */
function areOfMixes(sheet: WorkbookSheet, header: number, readings: readonly Reading[]): boolean {
  const columns = sheetTexts(sheet).columnsByRow.get(header) ?? [];
  return columns
    .filter((column) => massIn(textAt(sheet, header, column)) !== null)
    .some((column) => {
      const masses = readings.map(({ row }) => sheet.cellAt(row, column)?.value);
      return masses.every((mass) => typeof mass === "number") && new Set(masses).size > 1;
    });
}

/** Readings in °F below or beside a heading in °C, or in a row that ends in that unit. */
function foreignAt(sheet: WorkbookSheet, row: number, column: number): readonly Reading[] {
  const heading = textAt(sheet, row, column);
  const role = headerRole(heading);
  if (NO_READINGS.has(role)) return [];
  const beside = readingsBeside(sheet, row, column);
  const isSaid = saysCelsius(sheet, row, column);
  const isSaidBehind = isSaid || (OF_READINGS.has(role) && endInCelsius(sheet, beside));
  if (!isSaidBehind && !isUnderCelsius(sheet, row, column)) return [];
  const below = readingsBelow(sheet, row, column);
  const logs = [
    [below, isSaid && !areOfMixes(sheet, row, below)],
    [beside, isSaidBehind],
  ] as const;
  const isOfPoints = role === "freezing point";
  const isOfFreezer = temperatureWords.ofFreezer.test(plainWords(wordsOver(sheet, row, column)));
  return logs.flatMap(([readings, isCurve]) => {
    const cold = foreignReadings(readings, isCurve, isOfFreezer);
    const thawed = cold.length > 0 ? cold : thawedBetween(heading, readings);
    const foreign = thawed.length > 0 ? thawed : foreignInFridge(heading, readings);
    return isOfPoints ? foreign.filter((one) => !lostItsSign(one, readings)) : foreign;
  });
}

/** Readings in °F in a column or a row in °C, as a log of a freezer has them; one that is in both is told once. */
export function loggedInFahrenheit(sheet: WorkbookSheet): FahrenheitCell[] {
  const foreign = [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((column) => foreignAt(sheet, row, column)),
  );
  const byPlace = new Map(foreign.map((one) => [`${one.row},${one.column}`, one]));
  return [...byPlace.values()].map(({ value, ...place }) => ({
    ...place,
    temperatureF: value,
    isMarked: false,
  }));
}
