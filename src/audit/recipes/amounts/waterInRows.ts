import { productOf } from "../forms/productOf";
import type { Role } from "../headings/headerRole";
import type { RecipeBlock } from "../recipeBlock";

/** What of a class divides or multiplies, and is no water. */
const OF_CLASS = new Set<Role>([
  ...(["molar mass", "moles", "particles", "cryoscopic constant", "molality"] as const),
  ...(["depression", "freezing point", "measured"] as const),
]);
/** So many rows tell how the others are worked out. */
const SAMPLES = 5;

/** The columns of a row by which its formulas divide the moles or the mass of what is dissolved. */
function dividedBy({ sheet, roles, range }: RecipeBlock, row: number, mass: number): number[] {
  const isDissolved = (column: number) => column === mass || roles.get(column) === "moles";
  const columns = Array.from({ length: range.right - range.left + 2 }, (_, at) => range.left + at);
  return columns.flatMap((column) => {
    const formula = sheet.cellAt(row, column)?.formula;
    const { above = [], below = [] } =
      formula?.includes("/") === true ? (productOf(formula) ?? {}) : {};
    const isInRow = above.some((at) => at.row === row && isDissolved(at.column));
    return isInRow ? below.flatMap((at) => (at.row === row ? at.column : [])) : [];
  });
}

/**
 * The column of water in a table of solutions, whatever it is called: typed, and what the formulas of its rows divide
 * the moles or the mass by that is no molar mass.
 */
export function waterInRows(block: RecipeBlock): number | null {
  const { sheet, roles, recipes, names } = block;
  const mass = recipes[0]?.line;
  if (mass === undefined) return null;
  const rows = names.slice(0, SAMPLES).map(({ row }) => row);
  const isTyped = (row: number, column: number) => {
    const cell = sheet.cellAt(row, column);
    return typeof cell?.value === "number" && cell.formula === undefined;
  };
  const mayBe = (row: number) =>
    dividedBy(block, row, mass).filter(
      (column) =>
        column !== mass && !OF_CLASS.has(roles.get(column) ?? "other") && isTyped(row, column),
    );
  const [first = [], ...others] = rows.map(mayBe);
  const all = [...new Set(first)].filter((column) => others.every((one) => one.includes(column)));
  const [only, ...more] = all;
  return only === undefined || more.length > 0 ? null : only;
}
