import { putRow, span, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { absolute, type Place } from "../layouts/parts";

interface Jars {
  /** Own ingredients' headings: name, sugars, water, fat, protein, inert, allergens, then more. */
  readonly headings: readonly string[];
  readonly items: readonly string[];
  readonly none: string;
  readonly source?: string;
}

/** What the jars hold by their labels; gives the block with its headings. */
export function jars(
  { random, marked }: Kit,
  sheet: CorpusSheet,
  { row: top, column: left }: Place,
  words: Jars,
): string {
  const heads = putRow(sheet, top, left, words.headings);
  const rows = words.items.map((item, index) => {
    const [sugars, fat, protein] = [random.whole(20, 48), random.whole(0, 2), random.whole(0, 2)];
    const inert = random.whole(0, 2);
    const contents = [
      ...[item, sugars, 100 - sugars - fat - protein - inert, fat, protein, inert],
      ...[words.none, words.source],
    ];
    const cells = putRow(sheet, top + 1 + index, left, contents.slice(0, heads.length));
    const [name, sugar, water] = cells as [Spot, Spot, Spot];
    marked.ownLines.push({ name, sugars: sugar, water, allergens: cells[6]! });
    return cells;
  });
  return absolute(span([heads[0]!, ...rows.flat()]));
}
