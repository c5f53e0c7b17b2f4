import { putRow, span, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { absolute, type Place } from "../layouts/parts";

/** What something of one's own holds in 100 g; water takes the rest. */
export interface OwnContents {
  readonly name: string;
  readonly sugars: number;
  readonly fat: number;
  readonly protein: number;
  readonly inert: number;
}

const HEADINGS = ["name", "water", "sugars", "fat", "protein", "inert", "allergens"];

/** A table of what one makes or buys oneself, its sugars a little different each time; gives its block. */
export function larder(
  { marked, random }: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  list: readonly OwnContents[],
): string {
  const heads = putRow(sheet, row, column, HEADINGS);
  const rows = list.map(({ name, fat, protein, inert, ...contents }, index) => {
    const sugar = Math.round(10 * contents.sugars * random.between(0.92, 1.08)) / 10;
    const wet = Math.round(10 * (100 - sugar - fat - protein - inert)) / 10;
    const line = [name, wet, sugar, fat, protein, inert, "none"];
    const cells = putRow(sheet, row + 1 + index, column, line);
    const [named, water, sugars, , , , allergens] = cells as [Spot, Spot, Spot, ...Spot[]];
    marked.ownLines.push({ name: named, sugars, water, allergens: allergens! });
    return cells;
  });
  return absolute(span([...heads, ...rows.flat()]));
}
