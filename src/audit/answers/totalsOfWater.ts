import type { AuditContext } from "../context";
import { plainWaterGrams } from "../amounts/plainWaterGrams";
import { textAt } from "../recipes/cells";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { isSumOfColumn } from "../recipes/totals/isSumOfColumn";
import { componentGrams } from "./answers";
import type { LabelledAnswer } from "./labelledAnswer";
import { mainRecipe } from "./mainRecipe";
import { partOf } from "./partLabel";

/** Figures of fruit and dairy vary by so much. */
const VARIES = 0.08;
const CLOSE = 0.01;

const isNear = (one: number, other: number, by = CLOSE): boolean =>
  Math.abs(one - other) <= Math.max(0.5, by * other);

/** What the lines of a column add up to; null where one of them has no number. */
function sumOfLines({ sheet, names }: RecipeBlock, column: number): number | null {
  const values = names.map(({ row }) => sheet.cellAt(row, column)?.value);
  const numbers = values.filter((value) => typeof value === "number");
  return numbers.length === names.length ? numbers.reduce((sum, one) => sum + one, 0) : null;
}

function totalsIn(context: AuditContext, block: RecipeBlock): LabelledAnswer[] {
  const { sheet, headerRow, layout, recipes, roles, totals } = block;
  const [row, ...more] = totals;
  const recipe = layout === "down" && headerRow !== null ? mainRecipe(block) : null;
  if (recipe === null || row === undefined || more.length > 0) return [];
  return [...roles.keys()].flatMap((column) => {
    const label = `${textAt(sheet, headerRow ?? 0, column)}, Σ`;
    const said = recipes.some(({ line }) => line === column) ? null : partOf(label);
    const sum = said?.part === "water" && said.per === null ? sumOfLines(block, column) : null;
    const value = sheet.cellAt(row, column)?.value;
    if (sum === null || typeof value !== "number" || isSumOfColumn(sheet, row, column)) return [];
    const mix = context.mixOf(block, recipe);
    const isPlain = isNear(value, plainWaterGrams(mix)) && !isNear(value, sum);
    const isWater = isNear(sum, componentGrams(mix, "water") ?? 0, VARIES);
    return isPlain && isWater ? [{ sheet, row, column, label, block, recipe }] : [];
  });
}

/** The totals of columns that say how much water each line brings, where they are only the water poured in. */
export const totalsOfWater = (
  context: AuditContext,
  blocks: readonly RecipeBlock[],
): LabelledAnswer[] => blocks.flatMap((block) => totalsIn(context, block));
