import type { CellRange, Workbook, WorkbookSheet, WorkbookTable } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";

/** A block of a sheet that a formula reads. */
export interface RangeRead {
  readonly sheet: WorkbookSheet;
  readonly range: CellRange;
}

export type RangesRead = (sheet: WorkbookSheet, formula: string) => readonly RangeRead[];

/** A word that may be a defined name or a table's, with the columns in brackets behind it. */
const WORD =
  /"(?:[^"]|"")*"|(?<![\p{L}\p{N}_.!'\]])([\p{L}_\\][\p{L}\p{N}_.]*)(\[(?:[^[\]]|\[[^[\]]*\])*\])?(?![\p{L}\p{N}_(!'])/giu;
const OF_ONE_ROW = /@|#this row/i;
const MOST_STEPS = 4; // names that stand for names

/** The cells below the heading of the columns that brackets name; of all columns without. */
function columnsIn({ range, columns, hasTotals }: WorkbookTable, brackets: string): CellRange {
  const asked = brackets.toLowerCase();
  const places = columns.flatMap((column, place) =>
    asked.includes(`[${column.toLowerCase()}]`) ? [range.left + place] : [],
  );
  const [left, right] =
    places.length === 0 ? [range.left, range.right] : [Math.min(...places), Math.max(...places)];
  return { top: range.top + 1, left, bottom: range.bottom - Number(hasTotals), right };
}

function reader({ sheets, names }: Workbook): RangesRead {
  const sheetNamed = new Map(sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  const tables = new Map(
    sheets.flatMap((sheet) =>
      sheet.tables.map((table) => [table.name.toLowerCase(), { sheet, table }] as const),
    ),
  );
  const namesOf = new Map(names.map((each) => [each.name.toLowerCase(), each.refersTo]));

  const byAddress = (home: WorkbookSheet, formula: string): RangeRead[] =>
    referencesOf(formula).flatMap(({ sheet: name, range }) => {
      const sheet = name === null ? home : sheetNamed.get(name.toLowerCase());
      return sheet === undefined ? [] : [{ sheet, range }];
    });

  const byName = (home: WorkbookSheet, formula: string, steps: number): RangeRead[] =>
    [...formula.matchAll(WORD)].flatMap(([, word, brackets = ""]): readonly RangeRead[] => {
      const found = tables.get(word?.toLowerCase() ?? "");
      // A row's own cell of a table is a single cell.
      if (found !== undefined)
        return OF_ONE_ROW.test(brackets)
          ? []
          : [{ sheet: found.sheet, range: columnsIn(found.table, brackets) }];
      const refersTo = namesOf.get(word?.toLowerCase() ?? "");
      return refersTo === undefined ? [] : read(home, refersTo, steps + 1);
    });

  const hasWords = tables.size + namesOf.size > 0;
  const read = (home: WorkbookSheet, formula: string, steps: number): readonly RangeRead[] =>
    hasWords && steps < MOST_STEPS
      ? [...byAddress(home, formula), ...byName(home, formula, steps)]
      : byAddress(home, formula);
  return (home, formula) => read(home, formula, 0);
}

const readers = new WeakMap<Workbook, RangesRead>();

/** What formulas of a workbook read: by address, by a defined name, by a table's columns. */
export function rangesRead(workbook: Workbook): RangesRead {
  const known = readers.get(workbook) ?? reader(workbook);
  readers.set(workbook, known);
  return known;
}
