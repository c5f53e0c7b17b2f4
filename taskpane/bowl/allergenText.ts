import type { Words } from "../words/words";

/** How RIME.CAUTIONS says it when only some makers' goods have an allergen. */
const BY_MAKER = /^(?:(?<certain>.*); )?depending on the maker: (?<byMaker>.*) \(read the label\)$/;

/** What a function says of an ingredient's allergens, in the pane's words; each name as `stress` has it. */
export function allergenText(
  said: string,
  { allergenNames, eater }: Words,
  stress: (name: string) => string = (name) => name,
): string {
  const known: Readonly<Record<string, string>> = allergenNames;
  const inWords = (list: string) =>
    list
      .split(", ")
      .map((name) => stress(known[name] ?? name))
      .join(", ");
  const { certain, byMaker } = BY_MAKER.exec(said)?.groups ?? { certain: said };
  return [
    ...(certain === undefined ? [] : [inWords(certain)]),
    ...(byMaker === undefined ? [] : [eater.byMaker(inWords(byMaker))]),
  ].join("; ");
}
