import { amongNames } from "../../src/catalogue/names/amongNames";
import { knownItem } from "../../src/catalogue/names/knownItem";
import { normalName } from "../../src/catalogue/normalName";
import type { Matrix } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import { callFunction } from "../../src/worksheet/callFunction";

const WATER_LOST = "water lost"; // the item that takes evaporated water off

/** Every text of the own ingredients: more than their names, but few enough. */
const ownTexts = (own: Matrix | null): readonly string[] =>
  (own ?? []).flat().filter((cell) => typeof cell === "string");

const totalOf = (name: string, own: Matrix | null) =>
  callFunction("COMPONENT", name, 1, "total", own)[0]?.[0];

/** What the functions say against a range of own ingredients as a whole; null when they can read it. */
export function ownTrouble(own: Matrix | null): string | null {
  const answer = own === null ? null : totalOf("water", own);
  return isProblem(answer) ? answer.message : null;
}

/**
 * Tells whether the functions know a name as an ingredient, own ingredients included. Only what may be a name is
 * asked of them: for anything else they would look for the nearest name, which takes time when a sheet has
 * thousands of texts.
 */
export function nameKnower(own: Matrix | null): (name: string) => boolean {
  const mayBeOwn = amongNames(ownTexts(own));
  const answers = new Map<string, boolean>();
  const ask = (name: string): boolean => {
    const isLost = normalName(name) === WATER_LOST;
    if (!isLost && knownItem(name) === undefined && !mayBeOwn(name)) return false;
    // What is wrong with the own ingredients does not make the catalogue's names unknown.
    return [own, null].some((from) => !isProblem(totalOf(name, from)));
  };
  return (name) => {
    const known = answers.get(name) ?? ask(name);
    answers.set(name, known);
    return known;
  };
}
