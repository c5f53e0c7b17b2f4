import type { Matrix } from "../../src/foundation/cell";
import { eaterFacts } from "../bowl/eaterFacts";
import { allergenText } from "../bowl/allergenText";
import type { Words } from "../words/words";
import type { MixRow } from "../bowl/askMix";

export interface LabelPart {
  readonly name: string;
  /** As the functions say it; empty where there is nothing. */
  readonly allergens: string;
  readonly isUnknown: boolean;
}

/**
 * The ingredients in descending order of mass as weighed, as a label lists them (Regulation (EU) 1169/2011,
 * article 18), with the allergens that article 21 has stressed. Water lost by boiling is no ingredient.
 */
export function labelParts(rows: readonly MixRow[], own: Matrix | null): readonly LabelPart[] {
  const listed = rows
    .filter(({ name }) => name.toLowerCase() !== "water lost")
    .sort((one, other) => other.grams - one.grams);
  const facts = eaterFacts(
    { items: listed.map(({ name }) => [name]), grams: listed.map(({ grams }) => [grams]) },
    own,
  );
  return listed.map(({ name }) => ({
    name,
    allergens: facts.allergens.find(({ items }) => items.includes(name))?.text ?? "",
    isUnknown: facts.unknown.includes(name),
  }));
}

/** The allergens of an ingredient as a label stresses them: in capitals. */
export const stressed = ({ allergens }: LabelPart, words: Words): string =>
  allergens === "" ? "" : allergenText(allergens, words, (name) => name.toLocaleUpperCase());

/** The list as plain text, in which capitals are all the stress there is. */
export const labelLine = (parts: readonly LabelPart[], words: Words): string =>
  parts
    .map((part) => (part.allergens === "" ? part.name : `${part.name} (${stressed(part, words)})`))
    .join(", ");
