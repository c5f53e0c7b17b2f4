import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute, sumOf } from "../layouts/parts";

export const LAXATIVE = "Mit Xylit: kann bei übermäßigem Verzehr abführend wirken.";

const OWN_HEADS = ["Name", "Wasser", "Fett", "Zucker", "Eiweiß", "inert", "Allergene"];

const STEWED = ["Rhabarberkompott", "Zwetschgenkompott"];

/** What is in 100 g of the stewed fruits; gives the block with its headings. */
function inside({ random, marked }: Kit, sheet: CorpusSheet): string {
  const heads = putRow(sheet, 2, 0, OWN_HEADS);
  const rows = STEWED.map((name, index) => {
    const [sugars, inert] = [random.whole(13, 19), random.whole(1, 3)];
    const contents = [name, 100 - sugars - inert, 0, sugars, 0, inert, "keine"];
    const cells = putRow(sheet, 3 + index, 0, contents);
    const [own, water, , sweet] = cells as [Spot, Spot, Spot, Spot];
    marked.ownLines.push({ name: own, water, sugars: sweet, allergens: cells[6]! });
    return cells;
  });
  return absolute(span([heads[0]!, ...rows.flat()]));
}

/** Stewed fruits of the kitchen, for each 100 g, and one served frozen. */
export function stewed(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Eigenes Kompott");
  put(sheet, 0, 0, "Kompott aus der eigenen Küche, Gramm in 100 g");
  const own = inside(kit, sheet);
  putRow(sheet, 6, 0, ["Kompotteis, Zutat", "Menge (g)"]);
  const grams = [random.whole(80, 120) * 5, random.whole(60, 90) * 5, 200, 60];
  const lines = [...STEWED, "Wasser", "Xylit"].map((name, index) =>
    putRow(sheet, 7 + index, 0, [name, grams[index]]),
  );
  put(sheet, 11, 0, "Ansatz");
  sumOf(kit, sheet, { row: 11, column: 1 }, columnOf(lines, 1));
  const both = [0, 1].map((at) => span(columnOf(lines, at))).join(",");
  const point = shown(`=RIME.FREEZINGPOINT(${both},${own})`, "0.0");
  putRow(sheet, 12, 0, ["Gefrierpunkt (°C)", point]);
  put(sheet, 13, 0, LAXATIVE);
}
