import type { WorkbookSheet, WorkbookTable } from "../model";
import { quotedSheet } from "../quotedSheet";
import { contains } from "../references";
import { localKey, type AddressBook } from "./addressBook";
import { addressInTable, BRACKETS, OWN_ROW } from "./tableReference";

/** Texts and quoted sheets are passed over; then a word, with brackets behind it or not, or brackets alone. */
const WORD = new RegExp(
  String.raw`"(?:[^"]|"")*"|'(?:[^']|'')*'!?|(?<![\p{L}\p{N}_.!$\]])(?:([\p{L}_\\][\p{L}\p{N}_.]*)(${BRACKETS})?|(${BRACKETS}))(?![\p{L}\p{N}_(!'.])`,
  "giu",
);

/** Formulas of a sheet with names and table columns replaced by addresses. */
export type ByAddress = (formula: string, row: number, column: number) => string;

/** How one sheet's formulas write the cells of another. */
export const addressOn = (home: WorkbookSheet, { name }: WorkbookSheet, address: string): string =>
  name === home.name ? address : `${quotedSheet(name)}!${address}`;

/** The table of a sheet that a cell is in. */
export const tableAt = (
  sheet: WorkbookSheet,
  row: number,
  column: number,
): WorkbookTable | undefined => sheet.tables.find(({ range }) => contains(range, row, column));

/** Formulas kept, so that what all rows of a table say in the same words is looked up once. */
const MOST_KEPT = 2000;

/** Replaces, in the formulas of one sheet, the names and table columns of the book by what they stand for. */
export function byAddressOn(home: WorkbookSheet, { tables, names }: AddressBook): ByAddress {
  const inTable = (sheet: WorkbookSheet, table: WorkbookTable, brackets: string) => {
    const address = addressInTable(table, brackets);
    return address === null ? null : addressOn(home, sheet, address);
  };
  const ofWord = (word: string, brackets: string | undefined): string | null => {
    const table = tables.get(word.toLowerCase());
    if (table !== undefined) return inTable(table.sheet, table.target, brackets ?? "[]");
    const name = names.get(localKey(home.name, word)) ?? names.get(word.toLowerCase());
    return name === undefined || brackets !== undefined
      ? null
      : addressOn(home, name.sheet, name.target);
  };
  const forAnyRow = (formula: string, own: WorkbookTable | undefined): string =>
    formula.replace(
      WORD,
      (token: string, word?: string, brackets?: string, alone?: string): string => {
        if (word !== undefined) return ofWord(word, brackets) ?? token;
        return (alone && own && inTable(home, own, alone)) ?? token;
      },
    );
  const kept = new Map<string, string>();
  return (formula, row, column) => {
    const own = formula.includes("[") ? tableAt(home, row, column) : undefined;
    const key = `${own?.name ?? ""}${OWN_ROW}${formula}`;
    const known = kept.get(key) ?? forAnyRow(formula, own);
    if (kept.size >= MOST_KEPT) kept.clear();
    kept.set(key, known);
    return known.includes(OWN_ROW) ? known.replaceAll(OWN_ROW, String(row + 1)) : known;
  };
}
