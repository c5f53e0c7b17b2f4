import type { Workbook } from "../../workbook/model";
import type { RecipeBlock } from "../recipes/recipeBlock";
import type { LabelledAnswer } from "./labelledAnswer";

export type FindAnswers = (
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
) => readonly LabelledAnswer[];

/** A ledger's answers are looked for again when asked for, not kept. */
const MOST_KEPT = 2000;

interface Kept {
  readonly blocks: readonly RecipeBlock[];
  readonly answers: readonly LabelledAnswer[];
}

const areSame = (some: readonly RecipeBlock[], others: readonly RecipeBlock[]): boolean =>
  some.length === others.length && some.every((block, index) => block === others[index]);

/** Looks for answers once where several rules ask for those of the same lists. */
export function keptAnswers(find: FindAnswers): FindAnswers {
  const known = new WeakMap<Workbook, Kept>();
  return (workbook, blocks) => {
    const before = known.get(workbook);
    if (before !== undefined && areSame(before.blocks, blocks)) return before.answers;
    const answers = find(workbook, blocks);
    if (answers.length <= MOST_KEPT) known.set(workbook, { blocks, answers });
    return answers;
  };
}
