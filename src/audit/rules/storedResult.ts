import { judgeResults, RESULT } from "../judgeResults";
import { partsThatDiffer } from "../partsThatDiffer";
import type { Rule } from "../rule";

export const storedResult: Rule = {
  ...RESULT,
  title: "A stored result is not what the recipe gives",
  find: (context) => [
    ...judgeResults(context).filter(({ rule }) => rule === RESULT.id),
    ...partsThatDiffer(context),
  ],
};
