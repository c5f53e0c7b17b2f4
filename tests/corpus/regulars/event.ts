import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { alcoholIn, beside } from "../visitors/lines";
import { markFormulas } from "./columns";

/** What is on the shelves against what the party takes. */
function storeRoom(kit: Kit, items: readonly string[], wanted: string): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Store room");
  put(sheet, 0, 0, "Counted on Wednesday, all in kg");
  const heads = putRow(sheet, 1, 0, ["Item", "Shelf", "On hand (kg)", "Needed (kg)", "Order (kg)"]);
  const rows = items.map((item, index) => {
    const row = 2 + index;
    const shelf = random.pick(["A1", "A2", "B1", "cold room"]);
    const hand = shown(random.whole(0, 24) / 2, "0.0");
    const [name, , onHand] = putRow(sheet, row, 0, [item, shelf, hand]) as [Spot, Spot, Spot];
    const found = `=VLOOKUP(${a1(name)},${wanted},3,FALSE)`;
    const needed = put(sheet, row, 3, shown(found, "0.00"));
    const order = `=MAX(${a1(needed)}-${a1(onHand)},0)`;
    return [needed, put(sheet, row, 4, shown(order, "0.00"))];
  });
  markFormulas(kit, rows, heads.slice(3));
  note(kit, sheet, 3 + rows.length, 0, "Dairy comes fresh on Friday morning, ring before ten.");
}

/** The dessert in kilograms: the tasting batch and what the party takes; gives the block, too. */
function batch(kit: Kit, sheet: CorpusSheet, needed: Spot): [MarkedRecipe, string] {
  const made = called(kit.make(1)[0]!, { sugar: "granulated sugar", salt: "sea salt" });
  putRow(sheet, 1, 0, ["Dessert", made.title]);
  const heads = putRow(sheet, 8, 0, ["What we use", "Tasting batch (kg)", "For the party (kg)"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 9 + index, 0, [name, shown(inUnit(made.grams[index]!, "kg"), "0.000")]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const row = 9 + rows.length;
  put(sheet, row, 0, "Total");
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts, "0.000");
  const party = { column: 2, heading: heads[2]!, fixed: [needed, total], format: "0.00" };
  const part = (amount: string) => `=${amount}*${fixed(needed)}/${fixed(total)}`;
  const alsoAmounts = beside(kit, amounts, party, part);
  sumOf(kit, sheet, { row, column: 2 }, alsoAmounts, "0.00");
  const recipe = markRecipe(kit, made, { names, amounts, alsoAmounts, unit: "kg", total });
  return [recipe, `${sheet.name}!${absolute(span([...names, ...alsoAmounts]))}`];
}

/** Guests and portions; gives the cell with the kilograms they take. */
function wanted(kit: Kit, sheet: CorpusSheet): Spot {
  const guests = putRow(sheet, 3, 0, ["Guests", 5 * kit.random.whole(16, 40)])[1]!;
  const words = { label: "Portion (g)", bare: "Portion", value: kit.random.pick([70, 90, 100]) };
  const portion = input(kit, sheet, { row: 4, column: 0 }, words);
  const mix = shown(`=${a1(guests)}*${a1(portion)}/1000`, "0.0");
  return putRow(sheet, 5, 0, ["Mix to make (kg)", mix])[1]!;
}

/** What was found out at the tasting. */
const found = (made: MadeRecipe): Said[] => [
  { label: "Starts freezing at (°C)", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "Ice in the mix at −15 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -15 },
  },
  { label: "Water in the tasting batch (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Dissolved in the tasting batch (g)", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Sugars in the mix (%)", states: "sugar share", as: "typed" },
  ...alcoholIn(made, {
    label: "Pure alcohol in the tasting batch (g)",
    ...{ states: "alcohol", as: "typed", decimals: 1 },
  }),
];

/** A wedding: guests, portions, the batch and the order for it. */
export function event(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Wedding");
  put(sheet, 0, 0, "Wedding in the barn, dessert");
  const [recipe, block] = batch(kit, sheet, wanted(kit, sheet));
  const items = [...new Set(recipe.made.names)].filter((item) => item !== "water");
  storeRoom(kit, items, block);
  const next = say(sheet, recipe, { row: 9, column: 4 }, found(recipe.made));
  nameTarget(sheet, recipe, { row: next, column: 4, label: "How it goes out" });
  const free = recipe.total!.row + 2;
  tell(kit, sheet, recipe, { row: free, column: 0, as: "sentence" });
  note(kit, sheet, free + 2, 0, "Speeches at nine, so plates leave the van at half past nine.");
}
