import { badInput, isProblem } from "../../../foundation/problem";
import type { Result } from "../../../foundation/result";
import { parseRangeName } from "../../../workbook/address";
import type { CellRange } from "../../../workbook/model";
import { unitFromWord, type AmountUnit } from "../amounts/unit";
import { linesFrom } from "./lines";
import type { RecipeCorrection } from "./recipeCorrection";

/** How a recipe lies, as it was said, zero-based; null where it is left to be read. */
export interface StatedRecipe {
  readonly range: CellRange;
  readonly layout: RecipeCorrection["recipe"];
  readonly names: number | null;
  readonly amounts: readonly number[] | null;
  readonly unit: AmountUnit | null;
}

const said = (text: string | undefined): string | null =>
  text === undefined || text.trim() === "" ? null : text.trim();

/** Lines of the range; columns for names one below the other, rows for names along a row. */
function linesWithin(
  { top, left, bottom, right }: CellRange,
  layout: StatedRecipe["layout"],
  text: string,
): Result<readonly number[]> {
  const kind = layout === "across" ? "rows" : "columns";
  const [first, last] = kind === "rows" ? [top, bottom] : [left, right];
  const lines = linesFrom(text, kind);
  if (lines === null) return badInput(`"${text}" names no ${kind}`);
  return lines.every((line) => line >= first && line <= last)
    ? lines
    : badInput(`not all of the ${kind} "${text}" lie in the range`);
}

function stated(correction: RecipeCorrection): Result<StatedRecipe> {
  const { recipe: layout } = correction;
  const range = parseRangeName(correction.range);
  if (range === null) return badInput("a range is written like A1:C9");
  const [names, amounts, unit] = [correction.names, correction.amounts, correction.unit].map(said);
  const nameLines = names == null ? null : linesWithin(range, layout, names);
  const amountLines = amounts == null ? null : linesWithin(range, layout, amounts);
  if (isProblem(nameLines)) return nameLines;
  if (isProblem(amountLines)) return amountLines;
  const [line = null, ...more] = nameLines ?? [];
  if (more.length > 0) return badInput(`the names stand in one line, and "${names}" are more`);
  if (line !== null && amountLines?.includes(line) === true)
    return badInput(`"${names}" cannot hold both the names and amounts`);
  const known = unit == null || unit === "fraction" ? (unit ?? null) : unitFromWord(unit);
  if (unit != null && known === null) return badInput(`"${unit}" is no unit of an amount`);
  return { range, layout, names: line, amounts: amountLines, unit: known };
}

/** Reads a correction; a Problem in one sentence when it contradicts itself. */
export function statedRecipe(correction: RecipeCorrection): Result<StatedRecipe> {
  const read = stated(correction);
  return isProblem(read)
    ? badInput(
        `The correction of ${correction.sheet}!${correction.range} is not followed: ${read.message}.`,
      )
    : read;
}
