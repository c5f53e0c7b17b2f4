import { findItem } from "../catalogue/findItem";
import { spelledItem } from "../catalogue/names/spelledItem";
import { normalName } from "../catalogue/normalName";
import { badInput, outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { catalogueItem } from "./catalogueItem";
import type { Item } from "./item";
import { ownByWords } from "./ownByWords";

/** The user's own ingredients by normal name; a broken row spoils its own name only. */
export type OwnIngredients = ReadonlyMap<string, Result<Item>>;

export const NO_OWN_INGREDIENTS: OwnIngredients = new Map();

const WATER_LOST_NAMES = ["water lost", "wasserverlust", "verdampftes wasser"];

/** Evaporation: its grams come off the water of the mix. */
const WATER_LOST: Item = {
  name: "water lost",
  content: {
    ...{ water: -1, fat: 0, protein: 0, ash: 0, inert: 0, pieceWater: 0 },
    substances: [],
  },
  spread: {},
  facts: { allergens: [], cautions: [] },
  allergenText: null,
  cautionText: null,
  source: "weighed by the user",
  assumptions: [],
  origin: { kind: "water lost" },
};

export const quoted = (words: readonly string[]): string =>
  words.length < 2
    ? words.map((word) => `"${word}"`).join("")
    : `${words
        .slice(0, -1)
        .map((word) => `"${word}"`)
        .join(", ")} or "${words.at(-1) ?? ""}"`;

/** Keeps a sentence readable whatever a cell holds. */
export const shortened = (text: string): string =>
  text.length > 40 ? `${text.slice(0, 39)}…` : text;

/**
 * What a name stands for, as it is spelled and then by its words, each time the user's own ingredient first, then the
 * catalogue. Never guessed.
 * @param argument how the sentence calls the place of the name, e.g. "items, row 3"
 */
export function namedItem(name: string, own: OwnIngredients, argument: string): Result<Item> {
  const key = normalName(name);
  const mine = own.get(key);
  if (mine !== undefined) return mine;
  if (WATER_LOST_NAMES.includes(key)) return WATER_LOST;
  const shown = shortened(name.trim());
  const alike = spelledItem(name) === undefined ? ownByWords(own, name) : undefined;
  if (alike === null)
    return outsideValidity(
      `${argument}: "${shown}" could be several of the own ingredients; write the name as it stands there.`,
    );
  if (alike !== undefined) return alike;
  const match = findItem(name);
  switch (match.kind) {
    case "solute":
    case "ingredient":
      return catalogueItem(match);
    case "ambiguous":
      return outsideValidity(
        `${argument}: "${shown}" can mean several things; write ${quoted(match.choices)}.`,
      );
    case "unknown":
      return key === ""
        ? badInput(
            `${argument}: the name is blank; the name of a catalogue or own ingredient is expected.`,
          )
        : outsideValidity(
            `${argument}: "${shown}" is neither in the catalogue nor an own ingredient; ${
              match.nearest.length > 0
                ? `the nearest name is ${quoted(match.nearest)}`
                : "no name resembles it"
            }.`,
          );
  }
}
