import { remembered } from "../../foundation/remembered";
import { itemByFormula } from "./itemByFormula";
import { itemByFormulaWord } from "./itemByFormulaWord";
import { itemByShare } from "./itemByShare";
import { itemByWords } from "./itemByWords";
import { itemWithoutWater } from "./itemWithoutWater";
import type { KnownMatch } from "./itemMatch";
import { spelledItem } from "./spelledItem";

/** "Potassium chloride (KCl)", "dextrose (glucose monohydrate)": the same said twice, or which one of several it is. */
const TWICE = /^([^()[\]]+?)\s*[([]\s*([^()[\]]+?)\s*[)\]]$/;

const nameOf = (match: KnownMatch): string | null => {
  if (match.kind === "ambiguous") return null;
  return match.kind === "solute" ? match.solute.name : match.ingredient.name;
};

function saidTwice(name: string): KnownMatch | undefined {
  const [, outer = "", inner = ""] = TWICE.exec(name.trim()) ?? [];
  const [first, second] = [outer, inner].map((part) => (part === "" ? undefined : knownItem(part)));
  if (first === undefined || second === undefined) return undefined;
  const [one, other] = [nameOf(first), nameOf(second)];
  if (first.kind === "ambiguous")
    return other === null || first.choices.includes(other) ? second : undefined;
  return one === other || (second.kind === "ambiguous" && second.choices.includes(one ?? ""))
    ? first
    : undefined;
}

/** Numbers of trials and days are no words, and a ledger has thousands of them. */
const HAS_WORD = /\p{L}{2}|^\s*e ?\d{3}/iu;

function readName(name: string): KnownMatch | undefined {
  const byFormula = itemByFormula(name);
  if (byFormula !== undefined || !HAS_WORD.test(name)) return byFormula;
  return (
    itemByWords(name) ??
    itemByShare(name) ??
    itemWithoutWater(name) ??
    itemByFormulaWord(name) ??
    saidTwice(name)
  );
}

// The same stranger must not be taken apart again at each recalculation.
const NAMES_KEPT = 5000;
const foundByWords = remembered(NAMES_KEPT, readName);

/**
 * What a name in a cell stands for: as it is spelled, as a chemical formula, or by its words, in any order, number and
 * state of preparation. Never guessed: undefined where nothing or more than one thing fits.
 */
export function knownItem(name: string): KnownMatch | undefined {
  const spelled = spelledItem(name);
  if (spelled !== undefined) return spelled;
  return foundByWords(name);
}
