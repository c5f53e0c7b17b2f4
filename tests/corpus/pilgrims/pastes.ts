import { addSheet, put, putRow, shown, span } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";

const OWN = ["our apricot paste", "our rose and raspberry paste", "our blackcurrant paste"];

/** The house's own pastes, and a filling made with them. */
export function pastes({ marked, random }: Kit): void {
  const sheet = addSheet(marked.book, "Our pastes");
  put(sheet, 0, 0, "Contents in g per 100 g, from our own recipe cards");
  const heads = putRow(sheet, 1, 0, [
    ...["Name", "Sugars (g)", "Water (g)", "Fat (g)", "Protein (g)", "Inert (g)", "Allergens"],
  ]);
  const rows = OWN.map((item, index) => {
    const [sweet, rest] = [random.whole(35, 60), random.whole(1, 3)];
    return putRow(sheet, 2 + index, 0, [item, sweet, 100 - sweet - rest, 0, 0, rest, "none"]);
  });
  for (const [name, sugars, water, , , , allergens] of rows) {
    marked.ownLines.push({ name: name!, sugars: sugars!, water: water!, allergens: allergens! });
  }
  const own = absolute(span([heads[0]!, ...rows.flat()]));
  putRow(sheet, 7, 0, ["Filling with a paste", "g"]);
  const lines = [OWN[0]!, "water", "lemon juice"].map((item, index) =>
    putRow(sheet, 8 + index, 0, [item, [10 * random.whole(24, 36), 420, 30][index]]),
  );
  const call = `${span(columnOf(lines, 0))},${span(columnOf(lines, 1))},${own}`;
  putRow(sheet, 11, 0, ["First ice at, °C", shown(`=RIME.FREEZINGPOINT(${call})`, "0.0")]);
}

/** The house's own idea of a good bite on a sheet of its own, and whether the mix keeps to it. */
export function ownBite({ marked }: Kit, recipe: MarkedRecipe, row: number): void {
  const temperatureC = -18;
  const ice = trueValue(recipe.made, "ice of water", temperatureC);
  if (ice === null) return;
  const sheet = addSheet(marked.book, "Our bite");
  put(sheet, 0, 0, "What we call a good bite, by our own tasting");
  const heads = ["name", "basis", "temperature (°C)", "ice from", "ice to"];
  const first = putRow(sheet, 2, 0, heads)[0]!;
  const edge = (by: number) => shown(Number((ice + by).toFixed(2)), "0.00");
  const band = ["snaps, then melts", "water", temperatureC, edge(-0.05), edge(0.05)];
  const last = putRow(sheet, 3, 0, band)[4]!;
  const lines = `${span(recipe.names)},${span(recipe.amounts)}`;
  const call = `=RIME.CHECK(${lines},'${sheet.name}'!${absolute(span([first, last]))})`;
  const [centre] = marked.book.sheets;
  putRow(centre!, row, 6, ["Our own bite, at −18 °C", call]);
}
