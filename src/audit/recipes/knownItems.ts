import { findItem } from "../../catalogue/findItem";
import type { Matrix } from "../../foundation/cell";
import { plainWords } from "./plainWords";

/** What a name in a recipe stands for. */
export type ItemKnowledge =
  | { readonly kind: "known" }
  | { readonly kind: "ambiguous"; readonly choices: readonly string[] }
  | { readonly kind: "unknown"; readonly nearest: readonly string[] };

export type ItemCheck = (name: string) => ItemKnowledge;

const KNOWN: ItemKnowledge = { kind: "known" };
/** The recipe functions take evaporation as an item of its own. */
const WATER_LOST = /^(water lost|wasserverlust|verdampftes wasser)$/;

function ownNames(ownIngredients: Matrix | null): ReadonlySet<string> {
  const [headers = [], ...rows] = ownIngredients ?? [];
  const at = headers.findIndex(
    (header) => typeof header === "string" && plainWords(header) === "name",
  );
  const names = rows.map((row) => row[at]).filter((name) => typeof name === "string");
  return new Set(names.map(plainWords));
}

/** Knows the user's own ingredients and the catalogue; each name is looked up once. */
export function knownItems(ownIngredients: Matrix | null): ItemCheck {
  const own = ownNames(ownIngredients);
  const answers = new Map<string, ItemKnowledge>();
  const lookUp = (name: string): ItemKnowledge => {
    const plain = plainWords(name);
    if (own.has(plain) || WATER_LOST.test(plain)) return KNOWN;
    const match = findItem(name);
    if (match.kind === "ambiguous") return { kind: "ambiguous", choices: match.choices };
    return match.kind === "unknown" ? { kind: "unknown", nearest: match.nearest } : KNOWN;
  };
  return (name) => {
    const answer = answers.get(name) ?? lookUp(name);
    answers.set(name, answer);
    return answer;
  };
}
