import { RESULT } from "../answers/judgeResults";
import { resultsThatDiffer } from "../answers/resultsThatDiffer";
import { unfitAnswersAsOne } from "../answers/unfitAnswers";
import type { Rule } from "../rule";

export const storedResult: Rule = {
  ...RESULT,
  title: "A stored result is not what the recipe gives",
  find: (context) => [...unfitAnswersAsOne(context, resultsThatDiffer(context))],
};
