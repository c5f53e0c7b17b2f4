import type { WorkbookSheet } from "../../workbook/model";
import { replaceReferences } from "../../workbook/replaceReferences";
import type { Place } from "../recipes/recipeBlock";
import type { FilledLine, Line } from "./filledLines";

const LEAST_CELLS = 4;
const LEAST_SHARE = 0.66;
const MOST_CELLS = 300;
const RANGE = /^(\$?[A-Z]{1,3}\$?)(\d+):(\$?[A-Z]{1,3}\$?)(\d+)$/i;

/** A formula that reads the same rows of another sheet wherever it reads. */
interface Reading {
  readonly formula: string;
  /** The formula without the rows that it reads. */
  readonly frame: string;
  readonly top: number;
  readonly bottom: number;
}

/** The formula with other rows in all that it reads. */
const withRows = (formula: string, top: number | "#", bottom: number | "#"): string =>
  replaceReferences(formula, ({ written, address }) =>
    written.replace(address, address.replace(RANGE, `$1${top}:$3${bottom}`)),
  );

function readingOf(sheet: WorkbookSheet, { row, column }: Place): Reading | null {
  const formula = sheet.cellAt(row, column)?.formula;
  if (formula === undefined) return null;
  const spans = new Set<string>();
  replaceReferences(formula, ({ sheet: other, address }) => {
    const [, , top, , bottom] = RANGE.exec(address) ?? [];
    spans.add(other === null || top === undefined ? "" : `${top}:${bottom}`);
    return null;
  });
  const [span = ""] = spans;
  if (spans.size !== 1 || span === "") return null;
  const [top = 0, bottom = 0] = span.split(":").map(Number);
  return { formula, frame: withRows(formula, "#", "#"), top, bottom };
}

/** The step from the end of what one formula reads to what the next one begins with; null where they differ. */
function stepOf(readings: readonly (Reading | null)[]): number | null {
  const steps = readings.flatMap((reading, at) => {
    const before = readings[at - 1];
    return reading && before ? [reading.top - before.bottom] : [];
  });
  const [step] = steps;
  return step !== undefined && step > 0 && steps.every((one) => one === step) ? step : null;
}

/**
 * The line if its formulas read one list after the other from a sheet that holds the lines of all: what a number typed
 * among them should read lies between what its neighbours do.
 */
export function lineReadingOn(sheet: WorkbookSheet, line: Line): FilledLine | null {
  if (line.length < LEAST_CELLS || line.length > MOST_CELLS) return null;
  const places = Array.from({ length: line.length }, (_, at) => line.placeAt(at));
  const readings = places.map((place) => readingOf(sheet, place));
  const read = readings.filter((reading) => reading !== null);
  const [first] = read;
  const isMost = read.length >= LEAST_CELLS - 1 && read.length >= LEAST_SHARE * line.length;
  if (first === undefined || !isMost || read.some(({ frame }) => frame !== first.frame))
    return null;
  const step = stepOf(readings);
  if (step === null || read.every(({ top, bottom }) => top === bottom)) return null;
  const between = (at: number): string | null => {
    const [before, after] = [readings[at - 1], readings[at + 1]];
    const isBetween = before && after && after.top - step >= before.bottom + step;
    return isBetween ? withRows(first.formula, before.bottom + step, after.top - step) : null;
  };
  const expectedAt = ({ row, column }: Place): string | null =>
    between(places.findIndex((one) => one.row === row && one.column === column));
  const strangers = places.filter((place, at) => {
    const { value, formula } = sheet.cellAt(place.row, place.column) ?? {};
    return formula === undefined && typeof value === "number" && between(at) !== null;
  });
  return { ...line, sheet, pattern: first.formula, strangers, expectedAt };
}
