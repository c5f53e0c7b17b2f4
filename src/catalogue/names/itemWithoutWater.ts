import { itemByWords } from "./itemByWords";
import type { KnownMatch } from "./itemMatch";
import { nameWords } from "./nameWords";

const ANHYDROUS = /^(anhydrous|wasserfrei(e[mnrs]?)?)$/;

/** "Sodium sulfate, anhydrous", "Calciumchlorid wasserfrei": a substance whose plain name already means it without water. */
export function itemWithoutWater(name: string): KnownMatch | undefined {
  const words = nameWords(name);
  const rest = words.filter((word) => !ANHYDROUS.test(word));
  if (rest.length === words.length) return undefined;
  const match = itemByWords(rest.join(" "));
  return match?.kind === "solute" && match.solute.hydrateOf === undefined ? match : undefined;
}
