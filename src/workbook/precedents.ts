import {
  LexerTreeBuilder,
  deserializeRangeWithSheet,
  sequenceNodeType,
} from "@univerjs/engine-formula";
import type { CellRange, Workbook, WorkbookTable } from "./model";
import { formulaForEngine } from "./univer/formulaText";
import { titleForEngine } from "./univer/tableTitles";

/** A block of cells on a sheet, the sheet counted from zero. */
export interface SheetRange {
  readonly sheet: number;
  readonly range: CellRange;
}

/** The blocks a formula of a sheet reads. */
export type PrecedentsOf = (sheet: number, formula: string) => readonly SheetRange[];

const lower = (text: string): string => text.toLowerCase();

/** The columns of a table that a reference such as Table[[#This Row],[a]:[b]] names, else all. */
function columnsRead({ range, columns }: WorkbookTable, token: string): CellRange {
  const named = columns
    .map((column, place) =>
      lower(token).includes(`[${lower(titleForEngine(column))}]`) ? place : -1,
    )
    .filter((place) => place >= 0);
  if (named.length === 0) return range;
  const [left, right] = [range.left + Math.min(...named), range.left + Math.max(...named)];
  return { ...range, left, right };
}

/** What a formula's text reads: its references, and what its names and tables stand for. */
export function precedentsIn(workbook: Workbook): PrecedentsOf {
  const lexer = new LexerTreeBuilder();
  const sheetByName = new Map(workbook.sheets.map(({ name }, index) => [lower(name), index]));
  const tables = new Map(
    workbook.sheets.flatMap((sheet, index) =>
      sheet.tables.map((table) => [lower(table.name), { sheet: index, table }] as const),
    ),
  );
  const names = new Map(workbook.names.map(({ name, refersTo }) => [lower(name), refersTo]));

  function referenceRange(home: number, token: string): SheetRange[] {
    const { sheetName, range } = deserializeRangeWithSheet(token);
    const sheet = sheetName === "" ? home : sheetByName.get(lower(sheetName));
    const { rowCount = 0, columnCount = 0 } = workbook.sheets[sheet ?? -1] ?? {};
    if (sheet === undefined) return [];
    const within = (value: number, otherwise: number) => (Number.isNaN(value) ? otherwise : value);
    const top = within(range.startRow, 0);
    const left = within(range.startColumn, 0);
    const bottom = Math.min(within(range.endRow, Infinity), rowCount - 1);
    const right = Math.min(within(range.endColumn, Infinity), columnCount - 1);
    return [{ sheet, range: { top, left, bottom, right } }];
  }

  function read(home: number, formula: string, depth: number): SheetRange[] {
    const nodes = lexer.sequenceNodesBuilder(formulaForEngine(`=${formula}`)) ?? [];
    return nodes.flatMap((node) => {
      if (typeof node === "string") return [];
      if (node.nodeType === sequenceNodeType.REFERENCE) return referenceRange(home, node.token);
      const word = lower(/^[^[(]*/.exec(node.token.trim())?.[0] ?? "");
      const table = tables.get(word);
      if (table !== undefined) {
        return [{ sheet: table.sheet, range: columnsRead(table.table, node.token) }];
      }
      const refersTo = names.get(word);
      return refersTo === undefined || depth > 8 ? [] : read(home, refersTo, depth + 1);
    });
  }
  return (sheet, formula) => read(sheet, formula, 0);
}
