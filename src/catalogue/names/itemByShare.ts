import { itemByWords } from "./itemByWords";
import type { KnownMatch } from "./itemMatch";
import { nameWords } from "./nameWords";
import { spelledItem } from "./spelledItem";

const isShare = (word: string): boolean => word.endsWith("%");
const withoutShare = (name: string): string =>
  nameWords(name)
    .filter((word) => !isShare(word))
    .join(" ");

function namesOf(match: KnownMatch): readonly string[] {
  if (match.kind === "ambiguous") return [];
  const { name, aliases } = match.kind === "solute" ? match.solute : match.ingredient;
  return [name, ...aliases.en, ...aliases.de];
}

/** Those of its names that say this share, as it stands on a pack. */
const namesWith = (match: KnownMatch, share: string): readonly string[] =>
  namesOf(match).filter((name) => nameWords(name).includes(share));

/** Whether it is told by this share alone from others of its kind: "cream 35 %" is, "mint liqueur 36 %" is not. */
function isTheOne(choice: string, share: string): boolean {
  const match = spelledItem(choice);
  const names = match === undefined ? [] : namesWith(match, share);
  return names.some((name) => itemByWords(withoutShare(name))?.kind === "ambiguous");
}

/**
 * "Schlagsahne 35 %", "H-Milch 3,5 % Fett": what the words stand for without the share, if it is known by that share,
 * and of several the one that is. Another share is another thing.
 */
export function itemByShare(name: string): KnownMatch | undefined {
  const [share, ...more] = nameWords(name).filter(isShare);
  if (share === undefined || more.length > 0) return undefined;
  // the fat of "reduced-fat milk 2 %" is not that of "cream 35 % fat"
  const match =
    itemByWords(withoutShare(name)) ?? itemByWords(name.replace(/\d+([.,]\d+)?\s?%/, ""));
  if (match?.kind !== "ambiguous")
    return match && namesWith(match, share).length > 0 ? match : undefined;
  const those = match.choices.filter((choice) => isTheOne(choice, share));
  const [only] = those;
  if (only === undefined) return undefined;
  return those.length === 1 ? spelledItem(only) : { ...match, choices: those };
}
