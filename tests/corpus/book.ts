import { quotedSheet } from "../../src/workbook/quotedSheet";
import { cellName, parseCellName, rangeName } from "../../src/workbook/address";
import type {
  CellRange,
  DefinedName,
  Workbook,
  WorkbookTable,
  WorkbookValue,
} from "../../src/workbook/model";

/** What is typed into a cell: a formula begins with "=". */
export interface Typed {
  readonly content: number | string | boolean | { readonly error: string };
  readonly format?: string;
  /** A text that begins like a formula and is none. */
  readonly isText?: true;
  /** The result that the file holds for a formula; absent where it is what the formula gives. */
  readonly stored?: WorkbookValue;
}

export type Content = Typed | number | string | undefined;

export interface CorpusSheet {
  readonly name: string;
  /** Rows of cells; the first is A1's. */
  readonly cells: (Typed | undefined)[][];
  readonly hiddenRows: Set<number>;
  readonly hiddenColumns: Set<number>;
  readonly tables: WorkbookTable[];
  readonly merged: CellRange[];
  /** Blocks of which a filter hides rows, heading and all. */
  readonly filtered: CellRange[];
  hidden: boolean;
}

/** A workbook that can still be written to. */
export interface CorpusBook {
  readonly sheets: CorpusSheet[];
  /** Whether it is a file of values separated by semicolons, with decimal commas. */
  readonly isCsv: boolean;
  calculation: Workbook["calculation"];
  externalLinks: string[];
  readonly names: DefinedName[];
}

/** A place in a book; rows and columns from zero. */
export interface Spot {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export const emptyBook = (): CorpusBook => ({
  sheets: [],
  isCsv: false,
  calculation: "automatic",
  externalLinks: [],
  names: [],
});

export function addSheet(book: CorpusBook, name: string): CorpusSheet {
  const sheet: CorpusSheet = {
    ...{ name, cells: [], tables: [], merged: [], filtered: [], hidden: false },
    ...{ hiddenRows: new Set<number>(), hiddenColumns: new Set<number>() },
  };
  book.sheets.push(sheet);
  return sheet;
}

export function sheetNamed(book: CorpusBook, name: string): CorpusSheet {
  const found = book.sheets.find((sheet) => sheet.name === name);
  if (found === undefined) throw new Error(`The corpus has no sheet ${name}.`);
  return found;
}

/** What is typed, where a workbook has no −0. */
function typed(given: Exclude<Content, undefined>): Typed {
  const whole: Typed = typeof given === "object" ? given : { content: given };
  return whole.content === 0 ? { ...whole, content: 0 } : whole;
}

/** Writes at a zero-based place; undefined empties the cell. */
export function put(sheet: CorpusSheet, row: number, column: number, content: Content): Spot {
  while (sheet.cells.length <= row) sheet.cells.push([]);
  const cells = sheet.cells[row]!;
  while (cells.length <= column) cells.push(undefined);
  cells[column] = content === undefined ? undefined : typed(content);
  return { sheet: sheet.name, row, column };
}

/** Writes at an A1 address. */
export function write(sheet: CorpusSheet, address: string, content: Content): Spot {
  const { row, column } = parseCellName(address)!;
  return put(sheet, row, column, content);
}

/** Writes along a row, from a place. */
export const putRow = (
  sheet: CorpusSheet,
  row: number,
  column: number,
  contents: readonly Content[],
): Spot[] => contents.map((content, index) => put(sheet, row, column + index, content));

export const typedAt = (book: CorpusBook, { sheet, row, column }: Spot): Typed | undefined =>
  sheetNamed(book, sheet).cells[row]?.[column];

/** Replaces what is typed at a spot and keeps its number format. */
export function retype(book: CorpusBook, spot: Spot, content: Typed["content"]): void {
  const format = typedAt(book, spot)?.format;
  put(sheetNamed(book, spot.sheet), spot.row, spot.column, {
    content,
    ...(format !== undefined && { format }),
  });
}

export const a1 = ({ row, column }: Spot): string => cellName(row, column);
/** How a formula in one cell calls another, which may be on another sheet. */
export const calledFrom = (home: Spot, spot: Spot): string =>
  home.sheet === spot.sheet ? a1(spot) : `${quotedSheet(spot.sheet)}!${a1(spot)}`;
export const fixed = (spot: Spot): string => a1(spot).replace(/([A-Z]+)(\d+)/, "$$$1$$$2");

export const over = (spots: readonly Spot[]): CellRange => ({
  top: Math.min(...spots.map(({ row }) => row)),
  left: Math.min(...spots.map(({ column }) => column)),
  bottom: Math.max(...spots.map(({ row }) => row)),
  right: Math.max(...spots.map(({ column }) => column)),
});

/** The range from the first to the last of some spots, "A1:A9". */
export const span = (spots: readonly Spot[]): string => rangeName(over(spots));

/** Gives a number, or a formula, its number format. */
export const shown = (content: number | string, format: string): Typed => ({ content, format });

/** Whether something typed is a formula. */
export const isFormula = (cell: Typed | undefined): cell is Typed & { readonly content: string } =>
  typeof cell?.content === "string" && cell.content.startsWith("=") && cell.isText !== true;
