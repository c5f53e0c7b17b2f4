import { badInput, isProblem } from "../../../foundation/problem";
import type { Result } from "../../../foundation/result";
import { parseRangeName } from "../../../workbook/address";
import type { CellRange, WorkbookSheet } from "../../../workbook/model";
import { overlaps } from "../../../workbook/references";
import type { FinderContext } from "../finderContext";
import type { RecipeBlock } from "../recipeBlock";
import { headingOf } from "./headingOf";
import type { RecipeCorrection } from "./recipeCorrection";
import { statedAcross } from "./statedAcross";
import { statedDown } from "./statedDown";
import { statedRecipe } from "./statedRecipe";

/** The recipes of a sheet as the user corrected them. */
export interface Followed {
  readonly blocks: readonly RecipeBlock[];
  /** What could not be followed and what was left out, in sentences. */
  readonly notes: readonly string[];
}

/** The part of a range that is in use: a whole column is as long as the sheet. */
const inUse = ({ top, left, bottom, right }: CellRange, sheet: WorkbookSheet): CellRange => ({
  top,
  left,
  bottom: Math.min(bottom, Math.max(top, sheet.rowCount - 1)),
  right: Math.min(right, Math.max(left, sheet.columnCount - 1)),
});

/** The block that a correction describes; null where it says that there is none. */
function blockOf(context: FinderContext, correction: RecipeCorrection): Result<RecipeBlock | null> {
  const stated = statedRecipe(correction);
  if (isProblem(stated)) return stated;
  const place = `${correction.sheet}!${correction.range}`;
  const { heading } = correction;
  if (heading !== undefined && heading !== headingOf(context.sheet, stated.range))
    return badInput(
      `What was said of ${place} is not followed: its first row no longer reads "${heading}".`,
    );
  if (stated.layout === "none") return null;
  const used = { ...stated, range: inUse(stated.range, context.sheet) };
  const block = stated.layout === "down" ? statedDown(context, used) : statedAcross(context, used);
  return block.names.length === 0 || block.recipes.length === 0
    ? badInput(`What was said of ${place} is not followed: no name with an amount stands there.`)
    : block;
}

/** Puts what the user said in the place of what was found; of two words on the same cells the later holds. */
export function followCorrections(
  context: FinderContext,
  found: readonly RecipeBlock[],
  corrections: readonly RecipeCorrection[],
): Followed {
  let blocks = [...found];
  const notes: string[] = [];
  for (const correction of corrections) {
    const block = blockOf(context, correction);
    if (isProblem(block)) {
      notes.push(block.message);
      continue;
    }
    const range = block?.range ?? parseRangeName(correction.range);
    blocks = blocks.filter((each) => range === null || !overlaps(each.range, range));
    if (block !== null) blocks.push(block);
    else
      notes.push(`${correction.sheet}!${correction.range} was said to be no recipe and left out.`);
  }
  return { blocks, notes };
}
