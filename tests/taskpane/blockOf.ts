import { parseCellName, rangeName } from "../../src/workbook/address";
import type { BlockValue, CellBlock } from "../../taskpane/host";

/** A block of cells for a test: what begins with "=" is a formula and shows the value after " → ". */
export function blockOf(
  rows: readonly (readonly BlockValue[])[],
  { at = "A1", sheet = "Recipes", format = "General" } = {},
): CellBlock {
  const { row: top, column: left } = parseCellName(at)!;
  const columnCount = rows[0]?.length ?? 0;
  const split = (value: BlockValue): readonly [BlockValue, BlockValue] => {
    const [formula = "", shown] = typeof value === "string" ? value.split(" → ") : [];
    return shown === undefined
      ? [value, value]
      : [formula, isNaN(Number(shown)) ? shown : Number(shown)];
  };
  return {
    sheet,
    address: rangeName({ top, left, bottom: top + rows.length - 1, right: left + columnCount - 1 }),
    top,
    left,
    values: rows.map((row) => row.map((value) => split(value)[1])),
    formulas: rows.map((row) => row.map((value) => split(value)[0])),
    numberFormats: rows.map((row) => row.map(() => format)),
  };
}
