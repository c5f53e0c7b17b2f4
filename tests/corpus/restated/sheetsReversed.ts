import type { Recalculation } from "../../../src/workbook/recalculation";
import type { Restatement } from "./restatement";

/** The last sheet comes first, the first last. */
export const sheetsReversed: Restatement = {
  name: "sheets the other way round",
  restate: (book) => {
    const { workbook, recalculated } = book;
    // What is told of a workbook as a whole is told at its first formula, which then is another one.
    if (workbook.calculation !== "automatic") return book;
    const now = (sheet: number) => workbook.sheets.length - 1 - sheet;
    type Calculated = Recalculation["calculated"][number];
    const moved = (cell: Calculated): Calculated => ({ ...cell, sheet: now(cell.sheet) });
    return {
      workbook: { ...workbook, sheets: workbook.sheets.toReversed() },
      recalculated: {
        ...recalculated,
        valueAt: (sheet, row, column) => recalculated.valueAt(now(sheet), row, column),
        calculated: recalculated.calculated.map(moved),
        leftAlone: recalculated.leftAlone.map((left) => ({ ...left, cell: moved(left.cell) })),
      },
    };
  },
};
