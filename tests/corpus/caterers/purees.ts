import { addSheet, put, putRow, shown, span } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute } from "../layouts/parts";

const BOUGHT = [
  "passion fruit purée, sweetened",
  "yuzu pulp, bought",
  "rhubarb compote, house",
  "sour cherry coulis, house",
];

/** What bought purées hold, and a quick mix with one of them. */
export function ownPurees({ marked, random }: Kit): void {
  const sheet = addSheet(marked.book, "Purées");
  put(sheet, 0, 0, "From the packs and our own cards, g per 100 g");
  const heads = putRow(sheet, 2, 0, [
    ...["Name", "Water (g)", "Sugars (g)", "Fat (g)", "Protein (g)", "Inert (g)", "Allergens"],
  ]);
  const rows = BOUGHT.map((item, index) => {
    const [sugars, inert] = [random.whole(12, 38), random.whole(1, 4)];
    return putRow(sheet, 3 + index, 0, [item, 100 - sugars - inert, sugars, 0, 0, inert, "none"]);
  });
  for (const [name, water, sugars, , , , allergens] of rows) {
    marked.ownLines.push({ name: name!, water: water!, sugars: sugars!, allergens: allergens! });
  }
  const own = absolute(span([heads[0]!, ...rows.flat()]));
  putRow(sheet, 9, 0, ["Quick sorbet with the first", "Weight (g)"]);
  const mixed = [BOUGHT[0]!, "water", "sucrose"];
  const grams = [10 * random.whole(40, 55), 10 * random.whole(20, 30), 10 * random.whole(11, 15)];
  const lines = mixed.map((item, index) => putRow(sheet, 10 + index, 0, [item, grams[index]]));
  const call = `${span(columnOf(lines, 0))},${span(columnOf(lines, 1))},${own}`;
  putRow(sheet, 14, 0, ["Freezing point (°C)", shown(`=RIME.FREEZINGPOINT(${call})`, "0.0")]);
  putRow(sheet, 15, 0, ["Depression (K)", shown(`=RIME.DEPRESSION(${call})`, "0.0")]);
}
