import { addSheet, put, putRow, shown, span, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute, sumOf } from "../layouts/parts";

const OWN_HEADS = ["Name", "Allergene", "Zucker", "Wasser", "Eiweiß", "Fett", "inert"];

/** Juices of the estate, grams in 100 g, and where a sorbet of them freezes. */
export function juices(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Säfte");
  const heads = putRow(sheet, 0, 0, OWN_HEADS);
  const rows = ["Traubensaft rot", "Traubensaft weiß", "Verjus"].map((named, index) => {
    const sweet = [random.whole(15, 18), random.whole(14, 17), random.whole(3, 6)][index]!;
    const cells = putRow(sheet, 1 + index, 0, [named, "keine", sweet, 99 - sweet, 0, 0, 1]);
    const [name, allergens, sugars, water] = cells as [Spot, Spot, Spot, Spot];
    marked.ownLines.push({ name, allergens, sugars, water });
    return cells;
  });
  putRow(sheet, 5, 0, ["Traubensorbet", "g"]);
  const grams = [10 * random.whole(40, 60), 10 * random.whole(5, 9), 10 * random.whole(8, 12)];
  const lines = ["Traubensaft rot", "Verjus", "Zucker"].map((name, index) =>
    putRow(sheet, 6 + index, 0, [name, grams[index]]),
  );
  put(sheet, 9, 0, "Summe");
  sumOf(kit, sheet, { row: 9, column: 1 }, columnOf(lines, 1));
  const both = [0, 1].map((at) => span(columnOf(lines, at))).join(",");
  const own = absolute(span([heads[0]!, ...rows.flat()]));
  const point = shown(`=RIME.FREEZINGPOINT(${both},${own})`, "0.0");
  putRow(sheet, 10, 0, ["Gefrierpunkt (°C)", point]);
}
