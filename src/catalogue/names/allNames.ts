import { ambiguousNames } from "../ambiguousNames";
import { ingredients } from "../ingredients";
import { solutes } from "../solutes";
import type { KnownMatch } from "./itemMatch";

interface Named {
  readonly name: string;
  readonly aliases: { readonly en: readonly string[]; readonly de: readonly string[] };
}

/** Null: in no language more than in another. */
export type NameLanguage = "en" | "de" | null;

function namesOf({ name, aliases }: Named): readonly (readonly [string, NameLanguage])[] {
  return [
    ...[name, ...aliases.en].map((one) => [one, "en"] as const),
    ...aliases.de.map((one) => [one, "de"] as const),
  ];
}

/** Every name and alias of the catalogue with what it stands for. No name stands for two things. */
export function* allNames(): Generator<
  readonly [name: string, match: KnownMatch, language: NameLanguage]
> {
  for (const solute of solutes) {
    for (const [name, language] of namesOf(solute)) {
      yield [name, { kind: "solute", solute }, language];
    }
  }
  for (const ingredient of ingredients) {
    for (const [name, language] of namesOf(ingredient)) {
      yield [name, { kind: "ingredient", ingredient }, language];
    }
  }
  for (const [word, choices] of Object.entries(ambiguousNames)) {
    yield [word, { kind: "ambiguous", word, choices }, null];
  }
}
