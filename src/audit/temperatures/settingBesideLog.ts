import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { plainWords } from "../recipes/headings/plainWords";
import { sheetTexts } from "../recipes/sheetTexts";
import type { FahrenheitCell } from "./fahrenheitCells";
import { foreignReadings, type Reading } from "./foreignReadings";
import { CELSIUS, readingsBelow } from "./loggedTemperatures";

/** What is cooled, by the word that two labels of one device share. */
const DEVICES = [
  ...[/truhe|\bchest\b/, /gefrier-?schrank|tk-?schrank/, /zelle|\bcold ?(room|store)\b/],
  ...[/vitrine|\bcabinet\b/, /\bfreezer\b|\bfroster\b/],
];
const LEAST_LOGGED = 4;
/** Beyond so many labels a sheet is a ledger. */
const MOST_LABELS = 40;

interface Labelled {
  readonly device: RegExp;
  readonly beside: Reading | null;
  readonly below: readonly Reading[];
}

function labelled(sheet: WorkbookSheet, row: number, column: number): Labelled[] {
  const text = textAt(sheet, row, column);
  if (!CELSIUS.test(text)) return [];
  const device = DEVICES.find((words) => words.test(plainWords(text)));
  if (device === undefined || headerRole(text) !== "temperature") return [];
  const value = sheet.cellAt(row, column + 1)?.value;
  const beside = typeof value === "number" ? { row, column: column + 1, value } : null;
  return [{ device, beside, below: readingsBelow(sheet, row, column) }];
}

/** What a freezer is set to or said to be at, where its own readings tell that this is in °F. */
export function settingsInFahrenheit(sheet: WorkbookSheet): FahrenheitCell[] {
  const labels = [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((column) => labelled(sheet, row, column)),
  );
  if (labels.length > MOST_LABELS) return [];
  const logs = labels.filter(({ below }) => below.length >= LEAST_LOGGED);
  return labels.flatMap(({ device, beside }) => {
    const isForeign = logs.some(
      (log) =>
        log.device === device &&
        beside !== null &&
        foreignReadings([beside, ...log.below], false).includes(beside),
    );
    if (beside === null || !isForeign) return [];
    const { value, ...place } = beside;
    return [{ ...place, temperatureF: value, isMarked: false }];
  });
}
