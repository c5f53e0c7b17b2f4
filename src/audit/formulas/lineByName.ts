import { parseCellName } from "../../workbook/address";
import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { replaceReferences } from "../../workbook/replaceReferences";
import { holdsNumber } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import type { FilledLine, Line } from "./filledLines";
import { isOfOwnName, namesLeftOf, namesOfRead } from "./namesOfRow";

const LEAST_CELLS = 3;
const LEAST_SHARE = 0.66;
const MOST_CELLS = 300;

/** A cell that a formula reads in a row that moves. */
interface Read extends Place {
  readonly sheet: WorkbookSheet;
}

interface Written {
  readonly place: Place;
  readonly formula: string;
  /** The formula without the rows of references that move. */
  readonly frame: string;
  readonly reads: readonly Read[];
}

/** Gives each moving reference of a formula the row that is said for it. */
function withRows(formula: string, rowOf: (at: number) => number): string {
  let at = -1;
  return replaceReferences(formula, ({ written, address }) =>
    /:|\$\d/.test(address) ? null : written.replace(/\d+$/, () => String(rowOf((at += 1)) + 1)),
  );
}

function written(book: Workbook, sheet: WorkbookSheet, place: Place): Written | null {
  const formula = sheet.cellAt(place.row, place.column)?.formula;
  if (formula === undefined) return null;
  const reads: Read[] = [];
  const frame = replaceReferences(formula, ({ written: all, sheet: name, address }) => {
    if (/:|\$\d/.test(address)) return null;
    const cell = parseCellName(address.replaceAll("$", ""));
    const read = name === null ? sheet : book.sheets.find((one) => one.name === name);
    if (cell === null || read === undefined) return null;
    reads.push({ sheet: read, row: cell.row, column: cell.column });
    return all.replace(/\d+$/, "#");
  });
  return { place, formula, frame, reads };
}

/** How a reference finds its row: so many rows from the formula's, or by the name there. */
type Way = { readonly step: number } | { readonly rows: ReadonlyMap<string, number> };

const isMost = (some: number, all: number): boolean =>
  some >= LEAST_CELLS && some >= LEAST_SHARE * all;

/** The step that most of the references make, and how many do. */
function stepOf(reads: readonly Read[], alike: readonly Written[]) {
  const steps = reads.map(({ row }, at) => row - (alike[at]?.place.row ?? 0));
  const times = (step: number) => steps.filter((one) => one === step).length;
  const step = steps.find((one) => isMost(times(one), steps.length));
  return step === undefined ? null : { step, times: times(step) };
}

/** The rows of a table by their names: those from the first to the last that is read, and what goes on with them. */
function rowsByName(reads: readonly Read[], home: WorkbookSheet): Map<string, number> {
  const byName = new Map<string, number>();
  const [first] = reads;
  if (first === undefined) return byName;
  const { sheet, column } = first;
  const rows = reads.map(({ row }) => row);
  let [top, bottom] = [Math.min(...rows), Math.max(...rows)];
  while (holdsNumber(sheet, top - 1, column) && bottom - top < MOST_CELLS) top -= 1;
  while (holdsNumber(sheet, bottom + 1, column) && bottom - top < MOST_CELLS) bottom += 1;
  for (let row = top; row <= Math.min(bottom, top + MOST_CELLS); row += 1)
    for (const { text } of namesOfRead(sheet, { row, column }, home))
      if (!byName.has(text)) byName.set(text, row);
  return byName;
}

function wayOf(home: WorkbookSheet, alike: readonly Written[], at: number): Way | null {
  const reads = alike.flatMap((one) => one.reads[at] ?? []);
  const most = stepOf(reads, alike);
  if (most?.times === alike.length) return { step: most.step };
  const named = alike.filter(({ place, reads: all }) => {
    const read = all[at];
    return read !== undefined && isOfOwnName(home, place, read);
  });
  // Of what is bought in the order of a list only what was on it before goes by its name.
  if (most !== null && named.length <= most.times) return { step: most.step };
  return isMost(named.length, alike.length) ? { rows: rowsByName(reads, home) } : null;
}

/** The formulas of the form that most of them have. */
function alikeOf(all: readonly Written[]): readonly Written[] {
  const byFrame = new Map<string, Written[]>();
  for (const one of all) byFrame.set(one.frame, [...(byFrame.get(one.frame) ?? []), one]);
  const [most = []] = [...byFrame.values()].sort((one, other) => other.length - one.length);
  return isMost(most.length, all.length) ? most : [];
}

/** The line if most of its formulas are alike but for rows that they choose by their names: each price from a list. */
export function lineByName(book: Workbook, sheet: WorkbookSheet, line: Line): FilledLine | null {
  if (line.length < LEAST_CELLS || line.length > MOST_CELLS) return null;
  const places = Array.from({ length: line.length }, (_, at) => line.placeAt(at));
  const alike = alikeOf(places.flatMap((place) => written(book, sheet, place) ?? []));
  const [first] = alike;
  if (first === undefined || !isMost(alike.length, line.length)) return null;
  const ways = first.reads.map((_, at) => wayOf(sheet, alike, at));
  if (!ways.every((way) => way !== null) || ways.every((way) => "step" in way)) return null;
  const rowAt = (way: Way, place: Place): number | undefined => {
    if ("step" in way) return place.row + way.step;
    const own = namesLeftOf(sheet, place).find(({ text }) => way.rows.has(text));
    return own === undefined ? undefined : way.rows.get(own.text);
  };
  const expectedAt = (place: Place): string | null => {
    const rows = ways.map((way) => rowAt(way, place));
    return rows.includes(undefined) ? null : withRows(first.formula, (at) => rows[at] ?? 0);
  };
  const strangers = places.filter((place) => {
    const expected = expectedAt(place);
    const cell = sheet.cellAt(place.row, place.column);
    return expected !== null && cell?.formula !== expected && typeof cell?.value === "number";
  });
  return { ...line, sheet, pattern: first.formula, strangers, expectedAt };
}
