import { cellName, rangeName } from "../../src/workbook/address";
import type { BlockValue, CellBlock, Contents } from "../host";
import { asText } from "../office/cellContent";
import { ENTRY_COLUMNS, type EntryKey, type NotebookEntry } from "./entry";

const headerOf = (language: string) => (column: (typeof ENTRY_COLUMNS)[number]) =>
  language === "de" ? column.de : column.en;

/** The header row and the first lines of a new notebook. */
export const notebookContents = (language: string, entries: readonly NotebookEntry[]): Contents => [
  ENTRY_COLUMNS.map(headerOf(language)),
  ...entries.map(entryRow),
];

/** A cell's content; a text stays the text it is, also one that looks like a date or a formula. */
const content = (value: string | number | null): string | number =>
  typeof value === "string" ? asText(value) : (value ?? "");

/** One entry as a row of the sheet. */
export const entryRow = (entry: NotebookEntry): (string | number)[] =>
  ENTRY_COLUMNS.map(({ key }) => content(entry[key]));

type Found = ReadonlyMap<EntryKey, number>;

function columnsOf(headers: readonly BlockValue[]): Found | null {
  const found = new Map<EntryKey, number>();
  headers.forEach((header, at) => {
    const text = String(header).trim().toLowerCase();
    const column = ENTRY_COLUMNS.find(
      ({ en, de }) => text === en.toLowerCase() || text === de.toLowerCase(),
    );
    if (column !== undefined && !found.has(column.key)) found.set(column.key, at);
  });
  return found.has("date") && found.has("mix") && found.has("measuredC") ? found : null;
}

/** True for the filled block of a sheet that is a notebook. */
export const isNotebook = (block: CellBlock): boolean => columnsOf(block.values[0] ?? []) !== null;

const DAY_MS = 24 * 60 * 60 * 1000;
const DAY_ZERO_MS = Date.UTC(1899, 11, 30); // ECMA-376 18.17.4.1, serial dates of the 1900 system

/** A day as it is written here; one that someone typed is a number of days in the sheet. */
const dayText = (value: BlockValue): string =>
  typeof value === "number" && value >= 1 && value < 2_958_466 // the last is 31 December 9999
    ? new Date(DAY_ZERO_MS + Math.floor(value) * DAY_MS).toISOString().slice(0, 10)
    : String(value);

function entryOf(row: readonly BlockValue[], columns: Found): NotebookEntry {
  const at = (key: EntryKey): BlockValue => row[columns.get(key) ?? -1] ?? "";
  const text = (key: EntryKey) => String(at(key));
  const number = (key: EntryKey) => {
    const value = at(key);
    return typeof value === "number" ? value : null;
  };
  return {
    date: dayText(at("date")),
    recipe: text("recipe"),
    mix: text("mix"),
    forecastC: number("forecastC"),
    forecastBandK: number("forecastBandK"),
    measuredC: number("measuredC"),
    brix: number("brix"),
    freezerSetC: number("freezerSetC"),
    freezerC: number("freezerC"),
    firmnessForecast: text("firmnessForecast"),
    firmness: text("firmness"),
    note: text("note"),
  };
}

/** The entries of a notebook's sheet; columns of the user's own are passed over, blank lines too. */
export function readEntries(block: CellBlock): readonly NotebookEntry[] {
  const [headers = [], ...rows] = block.values;
  const columns = columnsOf(headers);
  if (columns === null) return [];
  return rows
    .filter((row) => row.some((value) => value !== ""))
    .map((row) => entryOf(row, columns));
}

/** The cells of the next line of a notebook, and its entry laid out for the columns that sheet has. */
export function nextLine(
  block: CellBlock,
  entry: NotebookEntry,
): { readonly address: string; readonly row: (string | number)[] } {
  const [headers = []] = block.values;
  const columns = columnsOf(headers) ?? new Map<EntryKey, number>();
  const row = headers.map((): string | number => "");
  for (const [key, at] of columns) row[at] = content(entry[key]);
  const top = block.top + block.values.length;
  const range = { top, left: block.left, bottom: top, right: block.left + headers.length - 1 };
  return { address: headers.length === 1 ? cellName(top, block.left) : rangeName(range), row };
}
