import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { sound } from "../guests/words";
import { note, type Kit } from "../kit";
import { columnOf, stillMet } from "../kitchens/hand";
import { absolute, sumOf, type Place } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";
import { perHundred, type MadeRecipe } from "../recipes";

const PREPS = ["strawberry prep 30", "mango prep 12", "fig paste"];
const SUGARS = [30, 26, 55];
const HEADS = ["name", "sugars", "water", "fat", "protein", "inert", "allergens", "source"];

/** What the suppliers' sheets say of their fruit; gives the range with its headings. */
function preps({ marked, random }: Kit, sheet: CorpusSheet): string {
  put(sheet, 0, 0, "Fruit preparations, g in 100 g, from the suppliers' sheets");
  const heads = putRow(sheet, 1, 0, HEADS);
  const rows = PREPS.map((prep, index) => {
    const [sugars, fat, protein, inert] = [
      ...[SUGARS[index]! + random.whole(-3, 3), 0.5, 1, random.whole(2, 5)],
    ] as [number, number, number, number];
    const water = 100 - sugars - fat - protein - inert;
    const line = [prep, sugars, water, fat, protein, inert, "none", "data sheet"];
    const cells = putRow(sheet, 2 + index, 0, line);
    const [name, sugarCell, waterCell] = cells as [Spot, Spot, Spot];
    marked.ownLines.push({ name, water: waterCell, sugars: sugarCell, allergens: cells[6]! });
    return cells;
  });
  return absolute(span([heads[0]!, ...rows.flat()]));
}

/** A bench mix with them. */
export function benchMix(kit: Kit): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, "Fruit preps");
  const own = preps(kit, sheet);
  putRow(sheet, 7, 0, ["Bench mix", "Weight (g)"]);
  const lines = [
    ...[[PREPS[0]!, 10 * random.whole(30, 45)] as const, [PREPS[2]!, 40] as const],
    ...[["water", 10 * random.whole(28, 40)] as const, ["sugar", 10 * random.whole(6, 9)] as const],
  ];
  const rows = lines.map((each, index) => putRow(sheet, 8 + index, 0, each));
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  put(sheet, 12, 0, "Bench mix, sum");
  sumOf(kit, sheet, { row: 12, column: 1 }, amounts);
  const call = `=RIME.FREEZINGPOINT(${span(names)},${span(amounts)},${own})`;
  putRow(sheet, 13, 0, ["Initial freezing point (°C)", shown(call, "0.00")]);
  note(kit, sheet, 14, 0, "Prep 30 is the one without pips.");
}

/** The customer's own band around what the sound recipe gives, and whether the mix is in it. */
export function ownBand(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  recipe: MarkedRecipe,
  given: MadeRecipe,
): number {
  const temperatureC = -16;
  const right = stillMet(perHundred(sound(kit, given)));
  const ice = trueValue(right, "ice of mix", temperatureC);
  if (ice === null) return row;
  const to = (by: number) => shown(Number((ice + by).toFixed(2)), "0.00");
  const heads = ["name", "temperature (°C)", "ice from", "ice to", "basis"];
  const first = putRow(sheet, row, column, heads)[0]!;
  const band = ["customer's bite", temperatureC, to(-0.06), to(0.06), "mix"];
  const last = putRow(sheet, row + 1, column, band)[4]!;
  const lines = `${span(recipe.names)},${span(recipe.amounts)}`;
  const call = `=RIME.CHECK(${lines},${absolute(span([first, last]))})`;
  putRow(sheet, row + 2, column, ["Customer's band", call]);
  return row + 3;
}
