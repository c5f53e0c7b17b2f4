import type { LarderEntry } from "./entries";

/** Upper case, accents and the German sharp s make no difference to a search. */
const folded = (text: string): string =>
  text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/ß/g, "ss").trim();

const namesOf = ({ item }: LarderEntry): readonly string[] => [
  item.name,
  ...item.aliases.en,
  ...item.aliases.de,
];

/** How well one name answers a search: 0 not at all, 4 it is the name. */
function rank(name: string, sought: string): number {
  if (name === sought) return 4;
  if (name.startsWith(sought)) return 3;
  const words = sought.split(/\s+/);
  if (words.every((word) => ` ${name}`.includes(` ${word}`))) return 2;
  return words.every((word) => name.includes(word)) ? 1 : 0;
}

/** A search hit, with the alias by which it was found when that is not its name. */
export interface Hit {
  readonly entry: LarderEntry;
  readonly foundAs: string | null;
}

interface RankedHit extends Hit {
  readonly rank: number;
}

function bestHit(entry: LarderEntry, sought: string): RankedHit {
  const [first, ...others] = namesOf(entry);
  let best: RankedHit = { entry, foundAs: null, rank: rank(folded(first ?? ""), sought) };
  for (const alias of others) {
    const aliasRank = rank(folded(alias), sought);
    if (aliasRank > best.rank) best = { entry, foundAs: alias, rank: aliasRank };
  }
  return best;
}

/** Entries whose name, English or German alias holds what was typed, best first; all when nothing was. */
export function searchEntries(entries: readonly LarderEntry[], typed: string): readonly Hit[] {
  const sought = folded(typed);
  if (sought === "") return entries.map((entry) => ({ entry, foundAs: null }));
  return entries
    .map((entry) => bestHit(entry, sought))
    .filter((hit) => hit.rank > 0)
    .sort((one, other) => other.rank - one.rank);
}
