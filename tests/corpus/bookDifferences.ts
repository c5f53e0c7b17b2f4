import { cellName } from "../../src/workbook/address";
import type { Workbook, WorkbookCell, WorkbookSheet } from "../../src/workbook/model";

type Pair = readonly [what: string, one: unknown, other: unknown];

const told = (value: unknown): string =>
  JSON.stringify(value instanceof Set ? [...value].sort((a, b) => Number(a) - Number(b)) : value);

const differing = (pairs: readonly Pair[]): string[] =>
  pairs
    .filter(([, one, other]) => told(one) !== told(other))
    .map(([what, one, other]) => `${what}: ${told(one)}, then ${told(other)}`);

/** A reference with and without needless quotes is the same. */
const unquoted = (text: string): string => text.replace(/'([A-Za-z_]\w*)'!/g, "$1!");

/** Formulas in a file name another workbook by its number. */
function sameFormula(formula: string | undefined, links: readonly string[]): string | undefined {
  return links.reduce(
    (text, link, index) => text?.replaceAll(`[${link}]`, `[${index + 1}]`),
    formula,
  );
}

function cellPairs(where: string, links: readonly string[], cells: (WorkbookCell | undefined)[]) {
  const [one, other] = cells;
  const formula = (cell: WorkbookCell | undefined) => sameFormula(cell?.formula, links);
  return [
    [`${where} value`, one?.value, other?.value],
    [`${where} formula`, formula(one), formula(other)],
    [`${where} format`, one?.format, other?.format],
  ] satisfies Pair[];
}

/** What a sheet holds besides its cells. */
const sheetPairs = (one: WorkbookSheet, other: WorkbookSheet): Pair[] =>
  (["name", "hidden", "tables", "merged", "hiddenRows", "hiddenColumns"] as const).map((what) => [
    `${one.name} ${what}`,
    one[what],
    other[what],
  ]);

function sheetDifferences(one: WorkbookSheet, other: WorkbookSheet, links: readonly string[]) {
  const [rows, columns] = [
    Math.max(one.rowCount, other.rowCount),
    Math.max(one.columnCount, other.columnCount),
  ];
  const cells = Array.from({ length: rows }, (_row, row) =>
    Array.from({ length: columns }, (_column, column) => {
      const where = `${one.name}!${cellName(row, column)}`;
      return cellPairs(where, links, [one.cellAt(row, column), other.cellAt(row, column)]);
    }),
  );
  return differing([...sheetPairs(one, other), ...cells.flat(2)]);
}

const namesOf = ({ names }: Workbook) =>
  names
    .map(({ name, refersTo, sheet }) => ({ name, refersTo: unquoted(refersTo), sheet }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));

/** Where two workbooks hold something else, a line each. */
export function bookDifferences(one: Workbook, other: Workbook): string[] {
  const links = one.externalLinks;
  return [
    ...differing([
      ["sheets", one.sheets.length, other.sheets.length],
      ["names", namesOf(one), namesOf(other)],
      ["calculation", one.calculation, other.calculation],
      ["links", links, other.externalLinks],
    ]),
    ...one.sheets.flatMap((sheet, index) => {
      const same = other.sheets[index];
      return same === undefined ? [] : sheetDifferences(sheet, same, links);
    }),
  ];
}
