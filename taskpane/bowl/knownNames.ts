import type { Matrix } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import { callFunction } from "../../src/worksheet/callFunction";

/** Tells whether the functions know a name as an ingredient, own ingredients included. Remembers answers. */
export function nameKnower(own: Matrix | null): (name: string) => boolean {
  const answers = new Map<string, boolean>();
  return (name) => {
    const remembered = answers.get(name);
    if (remembered !== undefined) return remembered;
    const known = !isProblem(callFunction("COMPONENT", name, 1, "solids", own)[0]?.[0]);
    answers.set(name, known);
    return known;
  };
}
