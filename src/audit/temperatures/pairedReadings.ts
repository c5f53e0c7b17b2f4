import type { WorkbookSheet } from "../../workbook/model";
import { fahrenheitToC } from "../answers/resultLabel";
import { textAt } from "../recipes/cells";
import { sheetTexts } from "../recipes/sheetTexts";
import type { FahrenheitCell } from "./fahrenheitCells";
import type { Reading } from "./foreignReadings";
import { CELSIUS, isExplained } from "./loggedTemperatures";

/** Fewer freezers do not tell how far what they are at lies from what they shall be at. */
const [LEAST_PAIRS, MOST_PAIRS] = [3, 60];
/** What is wanted and what is read differ by so much at most, in K. */
const CLOSE_K = 3;
/** One of two readings is foreign when it is so much warmer. */
const APART_K = 8;
/** One column is warmer than the other when it is so in each line, by so much. */
const WARMER_K = 2;

type Pair = readonly [Reading, Reading];

/** The numbers below two headings that stand beside each other, as far as both go. */
function pairsBelow(sheet: WorkbookSheet, header: number, column: number): Pair[] {
  const pairs: Pair[] = [];
  for (let row = header + 1; row <= header + MOST_PAIRS; row += 1) {
    const [left, right] = [sheet.cellAt(row, column)?.value, sheet.cellAt(row, column + 1)?.value];
    if (typeof left !== "number" || typeof right !== "number") return pairs;
    pairs.push([
      { row, column, value: left },
      { row, column: column + 1, value: right },
    ]);
  }
  return pairs;
}

/** The warmer of two readings that lie apart, where in °F it is as cold as the other. */
function foreignIn(sheet: WorkbookSheet, pair: Pair): Reading | null {
  const [cold, warm] = [...pair].sort((one, other) => one.value - other.value) as [
    Reading,
    Reading,
  ];
  const isApart = warm.value - cold.value >= APART_K;
  const isAlike = Math.abs(fahrenheitToC(warm.value) - cold.value) <= CLOSE_K;
  const isSaid = isExplained(sheet, pair[1].row, pair[1].column);
  return isApart && isAlike && !isSaid ? warm : null;
}

/** Whether one of two columns is warmer all along, as what leaves a bath is warmer than what it is set to. */
function isWarmerAllAlong(pairs: readonly Pair[]): boolean {
  const steps = pairs.map(([left, right]) => right.value - left.value);
  return steps.every((step) => step >= WARMER_K) || steps.every((step) => step <= -WARMER_K);
}

/** The one reading of two columns in °C, "Set (°C) | Today (°C)", that lies far from the one beside it unless it is in °F. */
export function pairedInFahrenheit(sheet: WorkbookSheet): FahrenheitCell[] {
  return [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((column) => {
      if (![column, column + 1].every((at) => CELSIUS.test(textAt(sheet, row, at)))) return [];
      const pairs = pairsBelow(sheet, row, column);
      const apart = pairs.filter(([left, right]) => Math.abs(left.value - right.value) > CLOSE_K);
      const [only, ...more] = apart;
      if (only === undefined || more.length > 0 || pairs.length < LEAST_PAIRS) return [];
      if (isWarmerAllAlong(pairs)) return [];
      const found = foreignIn(sheet, only);
      if (found === null) return [];
      const { value: temperatureF, ...place } = found;
      return [{ ...place, temperatureF, isMarked: false }];
    }),
  );
}
