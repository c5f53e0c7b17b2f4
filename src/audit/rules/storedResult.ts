import { judgeResults, RESULT } from "../answers/judgeResults";
import { partsThatDiffer } from "../amounts/partsThatDiffer";
import { unfitAnswersAsOne } from "../answers/unfitAnswers";
import type { Rule } from "../rule";

export const storedResult: Rule = {
  ...RESULT,
  title: "A stored result is not what the recipe gives",
  find: (context) => {
    const results = judgeResults(context).filter(({ rule }) => rule === RESULT.id);
    return [...unfitAnswersAsOne(context, [...results, ...partsThatDiffer(context)])];
  },
};
