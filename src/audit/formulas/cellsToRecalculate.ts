import type { SheetRange } from "../../workbook/precedents";
import type { AuditContext } from "../context";

const single = (sheet: number, row: number, column: number): SheetRange => ({
  sheet,
  range: { top: row, left: column, bottom: row, right: column },
});

const holdsFormula = ({ workbook }: AuditContext, { sheet, range }: SheetRange): boolean => {
  const content = workbook.sheets[sheet];
  for (let row = range.top; row <= range.bottom; row += 1) {
    for (let column = range.left; column <= range.right; column += 1) {
      if (content?.cellAt(row, column)?.formula !== undefined) return true;
    }
  }
  return false;
};

/**
 * What is worth calculating anew: the blocks that hold recipes and the cells that state a result, as far as
 * there is a formula in them. Empty when the engine need not be loaded.
 */
export function cellsToRecalculate(context: AuditContext): readonly SheetRange[] {
  const indexOf = new Map(context.workbook.sheets.map((sheet, index) => [sheet, index]));
  const results = context.results.map(({ sheet, row, column }) =>
    single(indexOf.get(sheet) ?? -1, row, column),
  );
  const blocks = context.blocks.map(({ sheet, range }) => ({
    sheet: indexOf.get(sheet) ?? -1,
    range,
  }));
  return [...results, ...blocks].filter((block) => holdsFormula(context, block));
}
