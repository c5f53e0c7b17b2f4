import { judgeResults, RESULT } from "../answers/judgeResults";
import { partsThatDiffer } from "../amounts/partsThatDiffer";
import type { Rule } from "../rule";

export const storedResult: Rule = {
  ...RESULT,
  title: "A stored result is not what the recipe gives",
  find: (context) => [
    ...judgeResults(context).filter(({ rule }) => rule === RESULT.id),
    ...partsThatDiffer(context),
  ],
};
