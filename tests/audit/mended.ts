import type { CellEdit } from "../../src/audit/finding";
import { cellName, parseCellName } from "../../src/workbook/address";
import { recalculate } from "../../src/workbook/evaluate";
import type { Workbook, WorkbookCell, WorkbookSheet } from "../../src/workbook/model";

/** A sheet with some of its cells replaced; null for a cell that becomes blank. */
function withCells(
  sheet: WorkbookSheet,
  cells: ReadonlyMap<string, WorkbookCell | null>,
): WorkbookSheet {
  const rows = [...cells.keys()].map((cell) => parseCellName(cell)?.row ?? 0);
  const columns = [...cells.keys()].map((cell) => parseCellName(cell)?.column ?? 0);
  return {
    ...sheet,
    rowCount: Math.max(sheet.rowCount, ...rows.map((row) => row + 1)),
    columnCount: Math.max(sheet.columnCount, ...columns.map((column) => column + 1)),
    cellAt: (row, column) => {
      const changed = cells.get(cellName(row, column));
      return changed === undefined ? sheet.cellAt(row, column) : (changed ?? undefined);
    },
  };
}

function edited(before: WorkbookCell | undefined, to: string | number): WorkbookCell | null {
  const format = before?.format === undefined ? {} : { format: before.format };
  if (typeof to === "string" && to.startsWith("="))
    return { value: before?.value ?? null, formula: to.slice(1), ...format };
  return to === "" ? null : { value: to, ...format };
}

/** The workbook after some edits, as they would be typed; values that hang on them are still the old ones. */
export function withEdits(workbook: Workbook, edits: readonly CellEdit[]): Workbook {
  const sheets = workbook.sheets.map((sheet) => {
    const cells = new Map(
      edits
        .filter((edit) => edit.sheet === sheet.name)
        .map(({ cell, to }) => {
          const { row, column } = parseCellName(cell) ?? { row: 0, column: 0 };
          return [cell, edited(sheet.cellAt(row, column), to)] as const;
        }),
    );
    return cells.size === 0 ? sheet : withCells(sheet, cells);
  });
  return { ...workbook, sheets };
}

/** The workbook with every formula that the engine knows calculated anew. */
export async function calculatedAnew(workbook: Workbook): Promise<Workbook> {
  const blocks = workbook.sheets.map(({ rowCount, columnCount }, sheet) => ({
    sheet,
    range: { top: 0, left: 0, bottom: rowCount - 1, right: columnCount - 1 },
  }));
  const { valueAt } = await recalculate(workbook, blocks);
  const sheets = workbook.sheets.map((sheet, index): WorkbookSheet => ({
    ...sheet,
    cellAt: (row, column) => {
      const cell = sheet.cellAt(row, column);
      const fresh = cell?.formula === undefined ? undefined : valueAt(index, row, column);
      return cell === undefined || fresh === undefined ? cell : { ...cell, value: fresh };
    },
  }));
  return { ...workbook, sheets };
}
