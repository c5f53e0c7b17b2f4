import { putRow, span, type CorpusSheet } from "../book";
import type { Kit } from "../kit";
import { anchored, type Place } from "./marking";

const HEADINGS = ["name", "source", "fat", "protein", "sugars", "inert", "water", "allergens"];

/** A table of things of the house or bought in, g per 100 g; gives its address, fixed. */
export function ownTable(
  kit: Kit,
  sheet: CorpusSheet,
  [top, left]: Place,
  names: readonly string[],
): string {
  const { random, language, marked } = kit;
  const [source, none] = language === "en" ? ["label", "none"] : ["Etikett", "keine"];
  const heads = putRow(sheet, top, left, HEADINGS);
  const rows = names.map((name, index) => {
    const [fat, protein, sugars] = [random.whole(0, 3), random.whole(0, 2), random.whole(16, 36)];
    const inert = random.whole(1, 3);
    const water = 100 - fat - protein - sugars - inert;
    const numbers = [fat, protein, sugars, inert, water];
    const cells = putRow(sheet, top + 1 + index, left, [name, source, ...numbers, none]);
    return Object.fromEntries(HEADINGS.map((heading, at) => [heading, cells[at]!]));
  });
  marked.ownLines.push(...rows);
  return anchored(span([heads[0]!, rows.at(-1)!["allergens"]!]));
}
