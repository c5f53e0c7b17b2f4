import { remembered } from "../../../foundation/remembered";
import { amongNames } from "../../../catalogue/names/amongNames";
import { knownItem } from "../../../catalogue/names/knownItem";
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

function ownNames(ownIngredients: Matrix | null): readonly string[] {
  const [headers = [], ...rows] = ownIngredients ?? [];
  const at = headers.findIndex(
    (header) => typeof header === "string" && plainWords(header) === "name",
  );
  return rows.map((row) => row[at]).filter((name) => typeof name === "string");
}

const NAMES_KEPT = 5000;

const inCatalogue: ItemCheck = remembered(NAMES_KEPT, (name): ItemKnowledge => {
  if (WATER_LOST.test(normalName(name))) return KNOWN;
  const match = knownItem(name);
  if (match === undefined) return UNKNOWN;
  return match.kind === "ambiguous" ? { kind: "ambiguous", choices: match.choices } : KNOWN;
});

/** Knows the user's own ingredients and the catalogue; each name is looked up once. */
export function knownItems(ownIngredients: Matrix | null): ItemCheck {
  if (ownIngredients === null) return inCatalogue;
  const isOwn = amongNames(ownNames(ownIngredients));
  return remembered(NAMES_KEPT, (name) => (isOwn(name) ? KNOWN : inCatalogue(name)));
}
