import type { Matrix } from "../../foundation/cell";
import { isProblem, type Problem } from "../../foundation/problem";
import { callFunction } from "../../worksheet/callFunction";

/** Null when a name stands for something known, else the sentence why it does not. */
export type ItemCheck = (name: string) => Problem | null;

/** Asks the worksheet functions whether they know a name; each name is asked once. */
export function knownItems(ownIngredients: Matrix | null): ItemCheck {
  const answers = new Map<string, Problem | null>();
  return (name) => {
    const key = name.trim();
    const known = answers.get(key);
    if (known !== undefined) return known;
    const answer = callFunction("COMPONENT", [[key]], [[100]], "water", ownIngredients)[0]?.[0];
    const problem = isProblem(answer) ? answer : null;
    answers.set(key, problem);
    return problem;
  };
}
