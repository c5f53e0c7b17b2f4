import { IDEAL_LAW, judgeResults } from "../answers/judgeResults";
import type { Rule } from "../rule";

export const idealLawOff: Rule = {
  ...IDEAL_LAW,
  title: "The ideal law is used where it is far off",
  find: (context) => judgeResults(context).filter(({ rule }) => rule === IDEAL_LAW.id),
};
