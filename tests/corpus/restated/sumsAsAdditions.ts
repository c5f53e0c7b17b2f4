import { cellName, parseRangeName } from "../../../src/workbook/address";
import type { WorkbookSheet } from "../../../src/workbook/model";
import { reformulated } from "./reformulated";
import type { Restatement } from "./restatement";

const SUM = /\bSUM\(([A-Z]+\d+:[A-Z]+\d+)\)/g;
const MOST_PARTS = 12;

/** "B3+B4+B5" for "B3:B5"; null for more than a few cells of one column, and where a sum skips one. */
function addition({ cellAt }: WorkbookSheet, address: string): string | null {
  const range = parseRangeName(address);
  if (range === null || range.left !== range.right) return null;
  const count = range.bottom - range.top + 1;
  if (count < 2 || count > MOST_PARTS) return null;
  const rows = Array.from({ length: count }, (_, at) => range.top + at);
  // A sum skips words and numbers typed as text, an addition does not: it says something else there.
  const areNumbers = rows.every((row) => typeof cellAt(row, range.left)?.value === "number");
  return areNumbers ? rows.map((row) => cellName(row, range.left)).join("+") : null;
}

/** Short sums are written as additions, cell by cell. */
export const sumsAsAdditions: Restatement = {
  name: "sums as additions",
  restate: ({ workbook, recalculated }) => ({
    workbook: reformulated(workbook, (formula, home) =>
      formula.replaceAll(SUM, (sum: string, address: string) => {
        const parts = addition(home, address);
        if (parts === null) return sum;
        return formula === sum ? parts : `(${parts})`;
      }),
    ),
    recalculated,
  }),
};
