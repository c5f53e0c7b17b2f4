import { ambiguousNames } from "../ambiguousNames";
import { ingredients } from "../ingredients";
import { kindsOfSpirit } from "../kindsOfSpirit";
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

/** "Rum 40 %": of a spirit without sugar the strength tells all. */
function* spirits(): Generator<readonly [string, KnownMatch, NameLanguage]> {
  for (const ingredient of ingredients) {
    const [, strength] = /^spirit (.+ %) vol$/.exec(ingredient.name) ?? [];
    if (strength === undefined) continue;
    for (const kind of kindsOfSpirit)
      yield [`${kind} ${strength}`, { kind: "ingredient", ingredient }, null];
  }
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
  yield* spirits();
  for (const [word, choices] of Object.entries(ambiguousNames)) {
    yield [word, { kind: "ambiguous", word, choices }, null];
  }
}
