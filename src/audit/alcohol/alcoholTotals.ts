import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import type { Totalled } from "../amounts/totalledLines";

const SAYS_TOTAL =
  /\b(totals?|sum|all|(al)?together|whole)\b|summe|gesamt|zusammen|im ganzen|\balles\b/i;
/** Totals stand at most this far behind the last drink. */
const REACH = 3;

interface Line {
  /** The alcohol of each drink. */
  readonly parts: readonly Place[];
  /** Where its total may be. */
  readonly ends: readonly Place[];
  /** The totals of other groups. */
  readonly others?: readonly Place[];
}

const isEthanol = (label: string): boolean => headerRole(label) === "ethanol";

const behind = (last: number): number[] => Array.from({ length: REACH }, (_, at) => last + 1 + at);

/** Columns of alcohol beside the drinks, with the labelled rows below them or below each group of them. */
function linesBelow({ sheet, names, roles, range, totals }: RecipeBlock): Line[] {
  const rows = names.map(({ row }) => row);
  const isTotal = (row: number) =>
    Array.from({ length: range.right + 1 }, (_, column) => textAt(sheet, row, column)).some(
      (text) => SAYS_TOTAL.test(text),
    );
  const last = Math.max(...rows);
  const among = totals.filter((row) => row < last);
  const ends = [...among, ...behind(last).filter((row) => totals.includes(row) || isTotal(row))];
  const columns = [...roles].filter(([, role]) => role === "ethanol").map(([column]) => column);
  return columns.flatMap((column) => {
    const at = (row: number): Place => ({ row, column });
    return ends.map((end, group) => {
      const own = rows.filter((row) => row < end && row > (ends[group - 1] ?? -1));
      const parts = among.length > 0 && own.length > 0 ? own : rows.filter((row) => row < end);
      return {
        parts: parts.map(at),
        ends: [at(end)],
        others: ends.filter((row) => row !== end).map(at),
      };
    });
  });
}

/** Rows of alcohol below drinks that stand across, with the headed columns right of them. */
function linesRight({ sheet, names, headerRow, range }: RecipeBlock): Line[] {
  const columns = names.map(({ column }) => column);
  const heads = behind(Math.max(...columns)).filter((column) =>
    SAYS_TOTAL.test(textAt(sheet, headerRow ?? -1, column)),
  );
  const rows = Array.from({ length: range.bottom + 1 - range.top }, (_, at) => range.top + at);
  return rows
    .filter((row) => isEthanol(textAt(sheet, row, range.left)))
    .map((row) => ({
      parts: columns.map((column) => ({ row, column })),
      ends: heads.map((column) => ({ row, column })),
    }));
}

/** Sums of the alcohol of several drinks, each with the numbers it should count. */
export function alcoholTotals(block: RecipeBlock): Totalled[] {
  const { sheet } = block;
  const valueAt = ({ row, column }: Place) => sheet.cellAt(row, column)?.value;
  const lines = block.layout === "down" ? linesBelow(block) : linesRight(block);
  return lines.flatMap(({ parts, ends, others = [] }) => {
    const summands = parts.flatMap((place) => {
      const value = valueAt(place);
      return typeof value === "number" ? [{ place, value, counts: value !== 0 }] : [];
    });
    return ends.flatMap((place): Totalled[] => {
      const [stored, formula] = [valueAt(place), sheet.cellAt(place.row, place.column)?.formula];
      const rest = { recipe: null, byFormula: false, mayHoldMore: false, unit: "g", summands };
      return typeof stored === "number"
        ? [{ sheet, place, stored, formula, ...rest, textSum: 0, otherTotals: others }]
        : [];
    });
  });
}
