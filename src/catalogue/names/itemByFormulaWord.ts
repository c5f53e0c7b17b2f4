import { itemByFormula } from "./itemByFormula";
import { itemByWords } from "./itemByWords";
import type { KnownMatch } from "./itemMatch";
import { itemWithoutWater } from "./itemWithoutWater";

/** "NaCl p.a.", "CaCl2 dihydrate": a formula with a word beside it, which is no amount. */
export function itemByFormulaWord(name: string): KnownMatch | undefined {
  const [formula = "", rest = ""] = name.trim().split(/[\s,-]+(.+)/);
  const match = /\d/.test(rest) ? undefined : itemByFormula(formula);
  if (match?.kind !== "solute") return undefined;
  const inWords = `${match.solute.name} ${rest}`;
  return itemByWords(inWords) ?? itemWithoutWater(inWords);
}
