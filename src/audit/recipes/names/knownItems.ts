import { allNames, type ItemMatch } from "../../../catalogue/findItem";
import { normalName } from "../../../catalogue/normalName";
import type { Matrix } from "../../../foundation/cell";
import { plainWords } from "../headings/plainWords";

/** What a name in a recipe stands for. */
export type ItemKnowledge =
  | { readonly kind: "known" }
  | { readonly kind: "ambiguous"; readonly choices: readonly string[] }
  | { readonly kind: "unknown" };

export type ItemCheck = (name: string) => ItemKnowledge;

const KNOWN: ItemKnowledge = { kind: "known" };
const UNKNOWN: ItemKnowledge = { kind: "unknown" };

/** The recipe functions take evaporation as an item of its own. */
const WATER_LOST = /^(water lost|wasserverlust|verdampftes wasser)$/;

let index: ReadonlyMap<string, ItemMatch> | undefined;

/** By compared form. A look-up that searches no nearest name: a ledger asks for thousands of strangers. */
function catalogueNames(): ReadonlyMap<string, ItemMatch> {
  if (index !== undefined) return index;
  const names = new Map<string, ItemMatch>();
  for (const [name, match] of allNames()) {
    const key = normalName(name);
    if (!names.has(key)) names.set(key, match);
  }
  index = names;
  return names;
}

function ownNames(ownIngredients: Matrix | null): ReadonlySet<string> {
  const [headers = [], ...rows] = ownIngredients ?? [];
  const at = headers.findIndex(
    (header) => typeof header === "string" && plainWords(header) === "name",
  );
  const names = rows.map((row) => row[at]).filter((name) => typeof name === "string");
  return new Set(names.map(normalName));
}

/** Knows the user's own ingredients and the catalogue; each name is looked up once. */
export function knownItems(ownIngredients: Matrix | null): ItemCheck {
  const own = ownNames(ownIngredients);
  const answers = new Map<string, ItemKnowledge>();
  const lookUp = (name: string): ItemKnowledge => {
    const key = normalName(name);
    if (own.has(key) || WATER_LOST.test(key)) return KNOWN;
    const match = catalogueNames().get(key);
    if (match === undefined) return UNKNOWN;
    return match.kind === "ambiguous" ? { kind: "ambiguous", choices: match.choices } : KNOWN;
  };
  return (name) => {
    const answer = answers.get(name) ?? lookUp(name);
    answers.set(name, answer);
    return answer;
  };
}
