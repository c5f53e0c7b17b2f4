import { putRow, shown, span, type CorpusSheet } from "../book";
import type { Kit } from "../kit";
import { absolute } from "./parts";

/** What packets say, under the headings of own ingredients; gives the range with its headings. */
export function packets(
  kit: Kit,
  sheet: CorpusSheet,
  top: number,
  words: {
    readonly headings: readonly string[];
    readonly items: readonly string[];
    readonly none: string;
  },
): string {
  const { random, marked } = kit;
  const heads = putRow(sheet, top, 0, words.headings);
  const rows = words.items.map((item, index) => {
    const [fat, protein, inert] = [random.whole(0, 4), random.whole(0, 3), random.whole(0, 2)];
    const sugars = random.whole(12, 45);
    const water = 100 - fat - protein - inert - sugars;
    const cells = putRow(sheet, top + 1 + index, 0, [
      ...[item, water, fat, sugars, protein, inert, words.none],
    ]);
    const [name, , , , , , allergens] = cells;
    marked.ownLines.push({
      name: name!,
      water: cells[1]!,
      sugars: cells[3]!,
      allergens: allergens!,
    });
    return cells;
  });
  return absolute(span([heads[0]!, ...rows.flat()]));
}

export const ENGLISH = ["name", "water", "fat", "sugars", "protein", "inert", "allergens"];
export const GERMAN = ["name", "Wasser", "Fett", "Zucker", "Eiweiß", "inert", "Allergene"];

/** Lines of names and grams under headings, and where they freeze with the packets' help. */
export function small(
  sheet: CorpusSheet,
  top: number,
  words: readonly [name: string, grams: string, point: string],
  lines: readonly (readonly [string, number])[],
  own: string,
): void {
  putRow(sheet, top, 0, words.slice(0, 2));
  const rows = lines.map((each, index) => putRow(sheet, top + 1 + index, 0, each));
  const [names, grams] = [0, 1].map((at) => span(rows.map((row) => row[at]!)));
  const call = `=RIME.FREEZINGPOINT(${names},${grams},${own})`;
  putRow(sheet, top + 1 + lines.length, 0, [words[2], shown(call, "0.00")]);
}
