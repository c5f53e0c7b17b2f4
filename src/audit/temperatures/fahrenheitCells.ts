import { eachCell } from "../../workbook/eachCell";
import type { WorkbookSheet } from "../../workbook/model";
import { labelAt } from "../answers/labelAt";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { plainWords } from "../recipes/headings/plainWords";
import type { Place } from "../recipes/recipeBlock";
import { CELSIUS, loggedInFahrenheit } from "./loggedTemperatures";
import { countsOtherThing } from "./countsOtherThing";
import { iceWaterInFahrenheit } from "./iceWaterInFahrenheit";
import { comparedInFahrenheit } from "./comparedSettings";
import { settingsInFahrenheit } from "./settingBesideLog";
import { pairedInFahrenheit } from "./pairedReadings";
import { sheetTexts } from "../recipes/sheetTexts";
import { temperatureWords } from "../recipes/roles/temperatureWords";
import { servedInFahrenheit } from "./servedTemperatures";
import { tablesInFahrenheit } from "./tablesInFahrenheit";

/** A cell that gives a temperature in °F. */
export interface FahrenheitCell extends Place {
  readonly temperatureF: number;
  /** False when nothing says so but that no freezer is that warm. */
  readonly isMarked: boolean;
}

const TEMPERATURE_TEXT = /^\s*([-−–]?\s?\d+(?:[.,]\d+)?)\s*(?:°\s*|º\s*|deg\.?\s*)?f\.?\s*$/i;
const FAHRENHEIT = /°\s?f\b|fahrenheit|\bdeg\.? ?f\b/i;
/** A fridge is warmer, and so are a cabinet that cools and ice that leaves the machine. */
const WARMER =
  /fridge|refrigerat|\bchill|\bkühl|\b(exit|outlet|leav\w*|draw\w*|out of|churn\w*|austritt\w*|verl[aä](ss|ß)\w*|entnahme\w*|aus (dem|der))\b/i;
const DURATION = /\b(min|hours?|stunden)\b|(?<!\p{L})h(?!\p{L})/iu;

/** Beyond this a number beside °F is no kitchen's temperature. */
const HOTTEST_F = 1000;
/** A freezer said to be warmer than this in °C is one in °F: one star stands for −6 °C. IEC 62552, from memory. */
const WARMEST_FREEZER_C = -6;
const WARMEST_FREEZER_F = 20;

function numberAt(sheet: WorkbookSheet, row: number, column: number): number | null {
  const value = column < 0 ? null : sheet.cellAt(row, column)?.value;
  return typeof value === "number" && Math.abs(value) <= HOTTEST_F ? value : null;
}

/** A word like "°F" right of a number is that number's unit, not a heading. */
const isUnitOfNumber = (sheet: WorkbookSheet, row: number, column: number, text: string): boolean =>
  /^[^\d]{1,12}$/.test(text) && numberAt(sheet, row, column - 1) !== null;

/** "1e", "12 b)": a letter after a number, neither of the scales. */
const NUMBERED = /^\d{1,3}\s?[abdeg-z][.)]?$/i;

/** Whether "1f" goes on with the numbers and letters above or below it. */
const isNumbering = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  [row - 1, row + 1].some((other) => NUMBERED.test(textAt(sheet, other, column)));

function fromText(sheet: WorkbookSheet, row: number, column: number): FahrenheitCell | null {
  const text = textAt(sheet, row, column);
  const [, digits] = TEMPERATURE_TEXT.exec(text) ?? [];
  if (digits !== undefined && !isNumbering(sheet, row, column)) {
    const plain = digits.replace(/[−–]/, "-").replace(/\s/g, "").replace(",", ".");
    return { row, column, temperatureF: Number(plain), isMarked: true };
  }
  if (FAHRENHEIT.test(text) && isUnitOfNumber(sheet, row, column, text)) {
    const temperatureF = numberAt(sheet, row, column - 1) ?? 0;
    return { row, column: column - 1, temperatureF, isMarked: true };
  }
  const beside = { row, column: column + 1 };
  const warm = numberAt(sheet, row, beside.column);
  if (warm === null || warm <= WARMEST_FREEZER_C || warm > WARMEST_FREEZER_F) return null;
  const isFreezer =
    temperatureWords.ofFreezer.test(plainWords(text)) &&
    ![FAHRENHEIT, DURATION, WARMER].some((otherwise) => otherwise.test(text)) &&
    headerRole(labelAt(sheet, { row, column })) === "temperature" &&
    !countsOtherThing(sheet, beside, column);
  return isFreezer ? { ...beside, temperatureF: warm, isMarked: false } : null;
}

/** Whether a heading or label over or beside a cell says °F itself. */
function isSaid(sheet: WorkbookSheet, { row, column }: Place): boolean {
  const beside = [1, 2, 3]
    .map((step) => textAt(sheet, row, column - step))
    .find((text) => text !== "");
  if (beside !== undefined && FAHRENHEIT.test(beside)) return true;
  for (let above = row - 1; above >= Math.max(0, row - 200); above -= 1) {
    const text = textAt(sheet, above, column);
    if (text !== "" && !TEMPERATURE_TEXT.test(text)) return FAHRENHEIT.test(text);
  }
  return false;
}

interface Scales {
  readonly celsius: number;
  readonly fahrenheitHeadings: number;
  readonly cells: readonly FahrenheitCell[];
}

function scalesIn(sheet: WorkbookSheet): Scales {
  let [celsius, fahrenheitHeadings] = [0, 0];
  const cells: FahrenheitCell[] = [];
  for (const [row, columns] of sheetTexts(sheet).columnsByRow) {
    for (const column of columns) {
      const text = textAt(sheet, row, column);
      const cell = fromText(sheet, row, column);
      cells.push(...(cell === null ? servedInFahrenheit(sheet, { row, column }, text) : [cell]));
      cells.push(...iceWaterInFahrenheit(sheet, { row, column }, text));
      if (cell === null && FAHRENHEIT.test(text)) fahrenheitHeadings += 1;
      if (CELSIUS.test(text)) celsius += 1;
    }
  }
  eachCell(sheet, (row, column, { value, format }) => {
    if (format === undefined || typeof value !== "number") return;
    if (CELSIUS.test(format)) celsius += 1;
    if (FAHRENHEIT.test(format)) cells.push({ row, column, temperatureF: value, isMarked: true });
  });
  // What is foreign in a log is so because its heading says °C, be it with a C alone.
  const logged = loggedInFahrenheit(sheet);
  celsius += logged.length;
  const settings = [...settingsInFahrenheit(sheet), ...comparedInFahrenheit(sheet)];
  const others = [...tablesInFahrenheit(sheet), ...pairedInFahrenheit(sheet), ...settings];
  const found = [...cells, ...logged, ...others];
  const once = new Map(found.toReversed().map((each) => [`${each.row},${each.column}`, each]));
  return { celsius, fahrenheitHeadings, cells: [...once.values()].toReversed() };
}

/** The temperatures in °F on a sheet that is otherwise in °C; none where headings tell the two apart. */
export function fahrenheitCells(sheet: WorkbookSheet): readonly FahrenheitCell[] {
  const { celsius, fahrenheitHeadings, cells } = scalesIn(sheet);
  if (celsius === 0 || fahrenheitHeadings > 0) return [];
  return cells.filter((cell) => !isSaid(sheet, cell));
}
