import { cellName } from "../../src/workbook/address";
import type {
  Workbook,
  WorkbookCell,
  WorkbookSheet,
  WorkbookValue,
} from "../../src/workbook/model";

export interface Difference {
  readonly kind: string;
  /** Where, and what both hold. */
  readonly line: string;
}

type Triple = readonly [where: string, one: unknown, other: unknown];

const told = (value: unknown): string =>
  JSON.stringify(value instanceof Set ? [...value].sort((a, b) => Number(a) - Number(b)) : value);

const differing = (kind: string, [where, one, other]: Triple): Difference[] =>
  told(one) === told(other)
    ? []
    : [{ kind, line: `${kind} ${where}: ${told(one)}, then ${told(other)}` }];

/** Formulas are the same with and without needless quotes or brackets; a file numbers other workbooks. */
function plainFormula(formula: string | undefined, links: readonly string[]): string | undefined {
  const numbered = links.reduce(
    (text, link, index) => text?.replaceAll(`[${link}]`, `[${index + 1}]`),
    formula,
  );
  return numbered
    ?.replace(/'((?:\[\d+\])?[A-Za-z_]\w*)'!/g, "$1!")
    .replace(/\b(TRUE|FALSE)\(\)/g, "$1");
}

/** A blank may stand with a stroke before it or without. */
const plainFormat = (format: string | undefined): string | undefined =>
  format?.replaceAll("\\ ", " ");

/** Whether two values of a cell are the same, numbers but for a relative difference. */
export function isSame(one: WorkbookValue, other: WorkbookValue, relative: number): boolean {
  if (typeof one !== "number" || typeof other !== "number") return told(one) === told(other);
  return Math.abs(one - other) <= relative * Math.max(Math.abs(one), Math.abs(other));
}

type Cell = WorkbookCell | undefined;

function cellDifferences(
  where: string,
  [one, other]: readonly [Cell, Cell],
  { links, relative }: { readonly links: readonly string[]; readonly relative: number },
): Difference[] {
  const values = [one?.value ?? null, other?.value ?? null] as const;
  const formula = (cell: Cell) => plainFormula(cell?.formula, links);
  return [
    ...(isSame(...values, relative) ? [] : differing("value", [where, ...values])),
    ...differing("formula", [where, formula(one), formula(other)]),
    ...differing("format", [where, plainFormat(one?.format), plainFormat(other?.format)]),
  ];
}

/** The places of all cells that one of two sheets has room for. */
export function placesIn(one: WorkbookSheet, other: WorkbookSheet) {
  const rows = Math.max(one.rowCount, other.rowCount);
  const columns = Math.max(one.columnCount, other.columnCount);
  return Array.from({ length: rows * columns }, (_, index) => ({
    row: Math.floor(index / columns),
    column: index % columns,
  }));
}

const BESIDES = [
  ...(["name", "hidden", "tables", "merged", "hiddenRows", "hiddenColumns", "filtered"] as const),
];

function sheetDifferences(
  one: WorkbookSheet,
  other: WorkbookSheet,
  how: Parameters<typeof cellDifferences>[2],
): Difference[] {
  return [
    ...BESIDES.flatMap((what) => differing(what, [one.name, one[what], other[what]])),
    ...placesIn(one, other).flatMap(({ row, column }) =>
      cellDifferences(
        `${one.name}!${cellName(row, column)}`,
        [one.cellAt(row, column), other.cellAt(row, column)],
        how,
      ),
    ),
  ];
}

/** What names stand for is written with fixed addresses by some and by others not. */
const namesOf = ({ names }: Workbook) =>
  names
    .map(({ name, refersTo, sheet }) => ({
      name,
      refersTo: plainFormula(refersTo, [])?.replaceAll("$", ""),
      sheet,
    }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));

/** What two workbooks hold differently; numbers may lie apart by a share of themselves. */
export function bookDifferences(one: Workbook, other: Workbook, relative = 0): Difference[] {
  const how = { links: one.externalLinks, relative };
  return [
    ...differing("sheets", ["in the book", one.sheets.length, other.sheets.length]),
    ...differing("names", ["in the book", namesOf(one), namesOf(other)]),
    ...differing("calculation", ["of the book", one.calculation, other.calculation]),
    ...differing("links", ["of the book", one.externalLinks, other.externalLinks]),
    ...one.sheets.flatMap((sheet, index) => {
      const same = other.sheets[index];
      return same === undefined ? [] : sheetDifferences(sheet, same, how);
    }),
  ];
}
