import {
  Workbook,
  type CellErrorValue,
  type CellValue,
  type Style,
  type Worksheet,
} from "@cj-tech-master/excelts";
import { rangeName } from "../../workbook/address";
import type { CellRange } from "../../workbook/model";
import { isErrorValue, type Book, type BookCell, type BookSheet, type CellLook } from "../book";
import { withDefinedNames } from "./definedNames";
import { markDynamicArrays } from "./dynamicArrays";
import { callsOurs, withFileFunctionNames } from "./functionPrefixes";

const PX_PER_CHARACTER = 7; // of the default font's widest digit, with 5 px of padding (ECMA-376 18.3.1.13)
const PADDING_PX = 5;
const POINTS_PER_PX = 0.75;
const FILE_ERRORS = ["#N/A", "#REF!", "#NAME?", "#DIV/0!", "#NULL!", "#VALUE!", "#NUM!"];
const WINDOW = [0, 0, 24_000, 14_000] as const; // in twentieths of a point
const TABLE_STYLE = { theme: "TableStyleLight1", showRowStripes: true } as const;

const colour = (hex: string): { argb: string } => ({
  argb: `FF${hex.replace("#", "").toUpperCase()}`,
});

function styleOf(look: CellLook): Partial<Style> {
  return {
    ...(look.numberFormat === undefined ? {} : { numFmt: look.numberFormat }),
    font: {
      ...(look.bold ? { bold: true } : {}),
      ...(look.italic ? { italic: true } : {}),
      ...(look.fontSizePt === undefined ? {} : { size: look.fontSizePt }),
      ...(look.colour === undefined ? {} : { color: colour(look.colour) }),
    },
    ...(look.fill === undefined
      ? {}
      : { fill: { type: "pattern", pattern: "solid", fgColor: colour(look.fill) } }),
    alignment: {
      ...(look.align === undefined ? {} : { horizontal: look.align }),
      ...(look.wrap ? { wrapText: true, vertical: "top" } : {}),
    },
  };
}

/** "_x0041_" would come back as "A": the file format keeps such texts by marking their first sign (ECMA-376 22.4.2.4). */
const keptText = (text: string): string => text.replace(/_(?=x[0-9A-F]{4}_)/gi, "_x005F_");

/** The value as the file can hold it: errors it does not know become #VALUE!. */
function storedValue({ value }: BookCell): string | number | boolean | CellErrorValue | undefined {
  if (value === null) return undefined;
  if (typeof value === "string") return keptText(value);
  if (!isErrorValue(value)) return value;
  const error = FILE_ERRORS.includes(value.error) ? value.error : "#VALUE!";
  return { error: error as CellErrorValue["error"] };
}

function fileValue(cell: BookCell, place: CellRange): CellValue {
  const result = storedValue(cell);
  if (cell.formula === undefined) return result ?? null;
  const formula = withFileFunctionNames(cell.formula);
  const common = { formula, ...(result === undefined ? {} : { result }) };
  if (cell.spills === undefined && !callsOurs(cell.formula)) return common;
  return { ...common, shareType: "array", ref: rangeName(cell.spills ?? place) };
}

function writeCells(target: Worksheet, { rows }: BookSheet): void {
  rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      if (cell === undefined) return;
      const written = target.getCell(r + 1, c + 1);
      written.value = fileValue(cell, { top: r, left: c, bottom: r, right: c });
      if (cell.look !== undefined) written.style = styleOf(cell.look);
    });
  });
}

function writeTables(target: Worksheet, { tables }: BookSheet): void {
  for (const { name, range, columns } of tables) {
    target.addTable({
      name,
      ref: rangeName({ ...range, bottom: range.top, right: range.left }),
      headerRow: true,
      style: TABLE_STYLE,
      columns: columns.map((column) => ({ name: column })),
      rows: Array.from({ length: range.bottom - range.top }, () => columns.map(() => null)),
    });
  }
}

function writeSizes(target: Worksheet, sheet: BookSheet): void {
  for (const [column, px] of sheet.columnWidthsPx) {
    target.getColumn(column + 1).width = (px - PADDING_PX) / PX_PER_CHARACTER;
  }
  for (const [row, px] of sheet.rowHeightsPx) target.getRow(row + 1).height = px * POINTS_PER_PX;
  for (const column of sheet.hiddenColumns) target.getColumn(column + 1).hidden = true;
  for (const row of sheet.hiddenRows) target.getRow(row + 1).hidden = true;
}

function writeSheet(workbook: Workbook, sheet: BookSheet): void {
  const target = workbook.addWorksheet(sheet.name, {
    state: sheet.hidden ? "hidden" : "visible",
    ...(sheet.frozenRows > 0 || sheet.frozenColumns > 0
      ? { views: [{ state: "frozen", xSplit: sheet.frozenColumns, ySplit: sheet.frozenRows }] }
      : {}),
  });
  writeTables(target, sheet);
  writeCells(target, sheet);
  writeSizes(target, sheet);
  for (const range of sheet.merged) target.mergeCells(rangeName(range));
}

/** The sheet that is shown first: a hidden one cannot be. */
function showFirst(workbook: Workbook, { sheets }: Book): void {
  const activeTab = Math.max(
    0,
    sheets.findIndex(({ hidden }) => !hidden),
  );
  const [x, y, width, height] = WINDOW;
  workbook.views = [{ x, y, width, height, firstSheet: 0, activeTab, visibility: "visible" }];
}

/**
 * A book as an .xlsx file: values, formulas with their last results, number formats, looks, widths, merged
 * and hidden cells, tables, names. Formulas of ours are stored as Excel stores an add-in's, and spill there too.
 */
export async function bookToXlsx(book: Book): Promise<Uint8Array> {
  const workbook = new Workbook();
  workbook.calcProperties.fullCalcOnLoad = true; // Excel computes anew with its own engine
  for (const sheet of book.sheets) writeSheet(workbook, sheet);
  showFirst(workbook, book);
  const bytes = new Uint8Array(await workbook.xlsx.writeBuffer());
  return markDynamicArrays(withDefinedNames(bytes, book));
}
