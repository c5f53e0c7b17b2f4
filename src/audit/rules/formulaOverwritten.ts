import { cellName } from "../../workbook/address";
import { moveFormula } from "../../workbook/moveFormula";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { RecipeBlock } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "formula-overwritten", severity: "warning" } as const;

/** A column counts as one of formulas when this many rows, and this share of them, follow one pattern. */
const LEAST_ROWS = 4;
const LEAST_SHARE = 0.75;

/** The rows whose cells in a column belong together: items (down) or recipes (across). */
const rowsOf = (block: RecipeBlock): readonly number[] =>
  block.layout === "down"
    ? block.names.map(({ row }) => row)
    : block.recipes.map(({ line }) => line);

function findInColumn({ sheet }: RecipeBlock, rows: readonly number[], column: number): Finding[] {
  const [top = 0] = rows;
  // Formulas are compared as they would read in the first row.
  const atTop = (row: number) => {
    const formula = sheet.cellAt(row, column)?.formula;
    return formula === undefined ? null : moveFormula(formula, top - row, 0);
  };
  const first = atTop(rows[0] ?? 0) ?? atTop(rows[1] ?? 0);
  if (first === null || rows.length < LEAST_ROWS) return [];
  const strangers = rows.filter((row) => atTop(row) !== first);
  if (strangers.length === 0 || strangers.length > (1 - LEAST_SHARE) * rows.length) return [];
  return strangers.flatMap((row) => {
    const cell = sheet.cellAt(row, column);
    if (typeof cell?.value !== "number") return [];
    const address = cellName(row, column);
    const message =
      cell.formula === undefined
        ? `${address} is the number ${cell.value} in a column of formulas: it does not follow when the recipe changes.`
        : `${address} has the formula =${cell.formula.slice(0, 80)}, unlike the other rows of its column.`;
    return findingAt(
      identity,
      sheet,
      { row, column },
      {
        message,
        effect: null,
        fix: `Copy the formula of ${cellName(top, column)} down, if the difference is not meant.`,
      },
    );
  });
}

export const formulaOverwritten: Rule = {
  ...identity,
  title: "One cell of a column of formulas is a number or another formula",
  find: ({ blocks }) =>
    blocks.flatMap((block) => {
      const rows = rowsOf(block);
      const columns = Array.from(
        { length: block.range.right - block.range.left + 2 },
        (_, at) => block.range.left + at,
      );
      return columns.flatMap((column) => findInColumn(block, rows, column));
    }),
};
