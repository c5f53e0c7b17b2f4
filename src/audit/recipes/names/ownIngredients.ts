import type { Cell, Matrix } from "../../../foundation/cell";
import { isProblem, type Problem } from "../../../foundation/problem";
import type { WorkbookSheet } from "../../../workbook/model";
import { callFunction } from "../../../worksheet/callFunction";
import { ownHeaderMeaning } from "../../../worksheet/ownHeaderMeaning";
import { headedRanges, type HeadedRange } from "../headedRanges";

/** A header-led range of the user's own ingredients, ready to be handed to the recipe functions. */
export interface OwnIngredients extends HeadedRange {
  /** Why the functions refuse the range, if they do. */
  readonly problem: Problem | null;
  /** Rows that are refused for themselves: their names alone cannot be used. */
  readonly refusedRows: readonly { readonly row: number; readonly problem: Problem }[];
}

/** Headers that say how much water there is, in any of the words that the functions read. */
const STATES_WATER = new Set<string | null>(["same as", "water", "solids", "brix"]);
const AMOUNT = /amount|weight|menge|gewicht|^(g|kg|grams?|gramm)$/;

function problemWith(item: Cell, matrix: Matrix): Problem | null {
  const answer = callFunction("COMPONENT", [[item]], [[100]], "water", matrix)[0]?.[0];
  return isProblem(answer) ? answer : null;
}

function refusedRows({ matrix, headers, range }: HeadedRange) {
  const nameAt = headers.indexOf("name");
  return matrix.slice(1).flatMap((row, index) => {
    const problem = problemWith(row[nameAt] ?? null, matrix);
    return problem === null ? [] : { row: range.top + 1 + index, problem };
  });
}

/**
 * The own-ingredients ranges of a sheet: a header row with `name` and one of `same as`, `water`, `solids`,
 * `brix`, down to the first row without a name; a list with amounts is none.
 */
export function ownIngredientsIn(sheet: WorkbookSheet): OwnIngredients[] {
  const own = headedRanges(sheet).filter(
    ({ headers }) =>
      headers.some((header) => STATES_WATER.has(ownHeaderMeaning(header))) &&
      !headers.some((header) => AMOUNT.test(header)),
  );
  return own.map((each) => {
    const problem = problemWith("water", each.matrix);
    return { ...each, problem, refusedRows: problem === null ? refusedRows(each) : [] };
  });
}
