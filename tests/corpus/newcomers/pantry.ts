import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { absolute, sumOf } from "../layouts/parts";
import { columnOf } from "../kitchens/hand";

/** What somebody has standing about that only its label knows. */
export interface Shelf {
  readonly sheet: string;
  readonly title: string;
  /** Headings in the order of the sheet, with or without a unit. */
  readonly heads: readonly string[];
  readonly items: readonly [string, string];
  readonly source: string;
  /** Names over and under what is stirred together from it, and over what comes of it. */
  readonly words: readonly [mixed: string, unit: string, total: string, freezes: string];
}

const keyOf = (head: string): string => head.toLowerCase().replace(/ \(g\)$/, "");

/** The labels' lines under their headings; gives the block. */
function labels({ random, marked }: Kit, sheet: CorpusSheet, { heads, items, source }: Shelf) {
  const top = putRow(sheet, 1, 0, heads);
  const rows = items.map((name, index) => {
    const [sugars, protein, inert] = [random.whole(38, 58), random.whole(0, 1), random.whole(1, 3)];
    const water = 100 - sugars - protein - inert;
    const label: Readonly<Record<string, string | number>> = {
      ...{ name, water, sugars, fat: 0, protein, inert, allergens: "none", source },
    };
    const cells = putRow(sheet, 2 + index, 0, [...heads.map((head) => label[keyOf(head)])]);
    const at = (head: string): Spot => cells[heads.map(keyOf).indexOf(head)]!;
    const [named, sugar, wet, told] = ["name", "sugars", "water", "allergens"].map(at);
    marked.ownLines.push({ name: named!, sugars: sugar!, water: wet!, allergens: told! });
    return cells;
  });
  return absolute(span([top[0]!, ...rows.flat()]));
}

/** Labels on a sheet of their own, and something stirred together from them. */
export function pantry(kit: Kit, shelf: Shelf): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, shelf.sheet);
  put(sheet, 0, 0, shelf.title);
  const own = labels(kit, sheet, shelf);
  const [mixed, unit, total, freezes] = shelf.words;
  putRow(sheet, 6, 0, [mixed, unit]);
  const spoons = [10 * random.whole(6, 14), 10 * random.whole(4, 9), 10 * random.whole(4, 9)];
  const lines = [...shelf.items, "water", "caster sugar"].map((name, index) =>
    putRow(sheet, 7 + index, 0, [name, spoons[index] ?? 5 * random.whole(1, 4)]),
  );
  put(sheet, 11, 0, total);
  sumOf(kit, sheet, { row: 11, column: 1 }, columnOf(lines, 1));
  const both = [0, 1].map((at) => span(columnOf(lines, at))).join(",");
  const call = shown(`=RIME.FREEZINGPOINT(${both},${own})`, "0.0");
  putRow(sheet, 12, 0, [freezes, call]);
}
