import { addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute, sumOf } from "../layouts/parts";

const HEADS = [
  "Name",
  "Wasser (g)",
  "Zucker (g)",
  "Fett (g)",
  "Eiweiß (g)",
  "inert (g)",
  "Allergene",
];

/** In 100 g: sugars from and to, fat, protein and what does not dissolve. */
const PACKETS = [
  { name: "Waldfruchtsirup", sweet: [60, 66], fat: 0, protein: 0, inert: 1, allergens: "keine" },
  { name: "Sojadrink, gesüßt", sweet: [2, 4], fat: 2, protein: 3, inert: 1, allergens: "Soja" },
  { name: "Aprikosenaufstrich", sweet: [38, 46], fat: 0, protein: 1, inert: 2, allergens: "keine" },
] as const;

/** What the packets say of 100 g; gives the block with its headings. */
function labels({ random, marked }: Kit, sheet: CorpusSheet): string {
  put(sheet, 0, 0, "Nährwerte vom Etikett, je 100 g, Wasser als Rest ausgerechnet");
  const heads = putRow(sheet, 1, 0, HEADS);
  const rows = PACKETS.map(({ name, sweet, fat, protein, inert, allergens }, index) => {
    const sugars = random.whole(sweet[0], sweet[1]);
    const wet = 100 - sugars - fat - protein - inert;
    const cells = putRow(sheet, 2 + index, 0, [name, wet, sugars, fat, protein, inert, allergens]);
    const [named, water, sugar, , , , told] = cells;
    marked.ownLines.push({ name: named!, sugars: sugar!, water: water!, allergens: told! });
    return cells;
  });
  return absolute(span([...heads, ...rows.flat()]));
}

/** A third sample, of what the shop had. */
export function fromLabels(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Probe C");
  const own = labels(kit, sheet);
  putRow(sheet, 7, 0, ["Probe C", "Menge (g)"]);
  const amounts = [10 * random.whole(5, 9), 10 * random.whole(25, 40), 10 * random.whole(6, 10)];
  const names = [...PACKETS.map(({ name }) => name), "Wasser"];
  const lines = names.map((name, index) =>
    putRow(sheet, 8 + index, 0, [name, amounts[index] ?? 10 * random.whole(3, 8)]),
  );
  put(sheet, 12, 0, "zusammen");
  sumOf(kit, sheet, { row: 12, column: 1 }, columnOf(lines, 1));
  const both = [0, 1].map((column) => span(columnOf(lines, column))).join(",");
  const call = shown(`=RIME.FREEZINGPOINT(${both},${own})`, "0.0");
  putRow(sheet, 13, 0, ["Gefrierpunkt, berechnet (°C)", call]);
  put(sheet, 15, 0, "Allergene: Soja");
}
