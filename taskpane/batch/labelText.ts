import type { Matrix } from "../../src/foundation/cell";
import { eaterFacts } from "../bowl/eaterFacts";
import type { MixRow } from "../bowl/askMix";

export interface LabelPart {
  readonly name: string;
  /** What the label has to stress; empty where there is nothing. */
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

/** The list as plain text, in which capitals are all the stress there is. */
export const labelLine = (parts: readonly LabelPart[]): string =>
  parts
    .map(({ name, allergens }) =>
      allergens === "" ? name : `${name} (${allergens.toLocaleUpperCase()})`,
    )
    .join(", ");
