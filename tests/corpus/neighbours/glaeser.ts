import { addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute, sumOf } from "../layouts/parts";

const JARS = ["Johannisbeeren, eingekocht", "Holunderblütensirup", "Rhabarbermark"] as const;

/** In 100 g of each: sugars and what does not dissolve, from and to; protein. */
const INSIDE = [
  { sweet: [34, 42], rest: [2, 5], protein: 1 },
  { sweet: [50, 58], rest: [0, 1], protein: 0 },
  { sweet: [4, 9], rest: [1, 3], protein: 1 },
] as const;

const HEADS = [
  ...["Name", "Zucker (g)", "Eiweiß (g)", "Fett (g)", "inert (g)", "Wasser (g)"],
  ...["Allergene", "Quelle"],
];

/** Their lines, for each 100 g; gives the block with its headings. */
function jars({ random, marked }: Kit, sheet: CorpusSheet): string {
  const heads = putRow(sheet, 2, 0, HEADS);
  const rows = JARS.map((name, index) => {
    const { sweet, rest, protein } = INSIDE[index]!;
    const [sugars, inert] = [random.whole(sweet[0], sweet[1]), random.whole(rest[0], rest[1])];
    const wet = 100 - sugars - inert - protein;
    const contents = [name, sugars, protein, 0, inert, wet, "keine", "selbst gekocht"];
    const cells = putRow(sheet, 3 + index, 0, contents);
    const [named, sugar, , , , water, allergens] = cells;
    marked.ownLines.push({ name: named!, sugars: sugar!, water: water!, allergens: allergens! });
    return cells;
  });
  return absolute(span([heads[0]!, ...rows.flat()]));
}

/** What the farm has in jars, and a sorbet from it. */
export function ownJars(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Eigene Gläser");
  put(sheet, 0, 0, "Was in unseren Gläsern ist, je 100 g");
  const own = jars(kit, sheet);
  putRow(sheet, 7, 0, ["Sorbet aus dem Glas", "Menge (g)"]);
  const amounts = [
    ...[10 * random.whole(30, 45), 10 * random.whole(8, 12), 10 * random.whole(15, 25)],
    ...[10 * random.whole(20, 30), 10 * random.whole(5, 8)],
  ];
  const lines = [...JARS, "Wasser", "Zucker"].map((name, index) =>
    putRow(sheet, 8 + index, 0, [name, amounts[index]]),
  );
  put(sheet, 13, 0, "Summe");
  sumOf(kit, sheet, { row: 13, column: 1 }, columnOf(lines, 1));
  const both = [0, 1].map((column) => span(columnOf(lines, column))).join(",");
  const call = shown(`=RIME.FREEZINGPOINT(${both},${own})`, "0.0");
  putRow(sheet, 14, 0, ["Gefrierpunkt (°C)", call]);
}
