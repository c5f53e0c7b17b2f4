import { Workbook, type Cell, type Color, type Worksheet } from "@cj-tech-master/excelts";
import type { CellLook } from "../book";

const PX_PER_CHARACTER = 7;
const PADDING_PX = 5;
const PX_PER_POINT = 4 / 3;

/** How a sheet of a file is drawn, beside what stands in it. */
export interface SheetLooks {
  readonly lookAt: (row: number, column: number) => Omit<CellLook, "numberFormat"> | undefined;
  readonly columnWidthsPx: ReadonlyMap<number, number>;
  readonly rowHeightsPx: ReadonlyMap<number, number>;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  /** What the sheet has and the bench does not carry, in words. */
  readonly notCarried: readonly string[];
}

/** Colours of a theme depend on parts that are not read; only colours given outright are kept. */
const hexOf = (color: Partial<Color> | undefined): string | undefined =>
  color?.argb !== undefined && /^[0-9A-F]{8}$/i.test(color.argb)
    ? `#${color.argb.slice(2).toLowerCase()}`
    : undefined;

function lookOf({ font, fill, alignment }: Cell): Omit<CellLook, "numberFormat"> {
  const colour = hexOf(font?.color);
  const ground = fill?.type === "pattern" ? hexOf(fill.fgColor) : undefined;
  const align = alignment?.horizontal;
  return {
    ...(font?.bold ? { bold: true } : {}),
    ...(font?.italic ? { italic: true } : {}),
    ...(font?.size !== undefined && font.size !== 11 ? { fontSizePt: font.size } : {}),
    ...(colour === undefined ? {} : { colour }),
    ...(ground === undefined ? {} : { fill: ground }),
    ...(align === "left" || align === "center" || align === "right" ? { align } : {}),
    ...(alignment?.wrapText ? { wrap: true } : {}),
  };
}

function columnWidths(sheet: Worksheet): Map<number, number> {
  const widths = new Map<number, number>();
  for (let column = 0; column < sheet.columnCount; column += 1) {
    const width = sheet.getColumn(column + 1).width;
    if (width !== undefined && width > 0) {
      widths.set(column, Math.round(width * PX_PER_CHARACTER + PADDING_PX));
    }
  }
  return widths;
}

function someCell(sheet: Worksheet, has: (cell: Cell) => boolean): boolean {
  let found = false;
  sheet.eachRow((row) => {
    row.eachCell((cell) => {
      found ||= has(cell);
    });
  });
  return found;
}

const isRich = ({ value }: Cell): boolean =>
  typeof value === "object" && value !== null && "richText" in value;

const NOT_CARRIED: readonly (readonly [what: string, has: (sheet: Worksheet) => boolean])[] = [
  ["conditional formats", (sheet) => sheet.conditionalFormattings.length > 0],
  ["input rules", (sheet) => Object.keys(sheet.dataValidations.model).length > 0],
  ["the protection of sheets", (sheet) => (sheet.sheetProtection ?? null) !== null],
  ["hyperlinks", (sheet) => someCell(sheet, ({ hyperlink }) => hyperlink !== undefined)],
  ["bold or coloured words inside a text", (sheet) => someCell(sheet, isRich)],
];

function looksOf(sheet: Worksheet): SheetLooks {
  const rowHeightsPx = new Map<number, number>();
  sheet.eachRow((row, number) => {
    if (row.height) rowHeightsPx.set(number - 1, Math.round(row.height * PX_PER_POINT));
  });
  // A sheet without views has no list of them either, whatever its type says.
  const views = (sheet.views as Worksheet["views"] | undefined) ?? [];
  const view = views.find(({ state }) => state === "frozen") as
    { xSplit?: number; ySplit?: number } | undefined;
  return {
    lookAt: (row, column) => {
      const cell = sheet.findCell(row + 1, column + 1);
      return cell === undefined ? undefined : lookOf(cell);
    },
    columnWidthsPx: columnWidths(sheet),
    rowHeightsPx,
    frozenRows: view?.ySplit ?? 0,
    frozenColumns: view?.xSplit ?? 0,
    notCarried: NOT_CARRIED.filter(([, has]) => has(sheet)).map(([what]) => what),
  };
}

/** The looks of every sheet by name, or null when the second reader cannot read the file. */
export async function readLooks(
  bytes: Uint8Array,
): Promise<ReadonlyMap<string, SheetLooks> | null> {
  try {
    const workbook = new Workbook();
    await workbook.xlsx.load(bytes.slice().buffer);
    return new Map(workbook.worksheets.map((sheet) => [sheet.name, looksOf(sheet)]));
  } catch {
    return null; // looks are worth less than the contents, which the guarded reader has
  }
}
