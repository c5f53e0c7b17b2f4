import { a1, addSheet, put, putRow, shown, span, type CorpusSheet } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { alcoholIn, beside } from "../visitors/lines";
import { bar } from "./bar";
import { priceOf } from "./prices";

const TAX = ["full", "reduced", "reduced"];

/** What the wholesaler charges; gives the block to look up in. */
function priceList(kit: Kit, items: readonly string[]): string {
  const sheet = addSheet(kit.marked.book, "Prices");
  putRow(sheet, 0, 0, ["Item", "Tax", "£ per kg"]);
  const rows = items.map((item, index) => {
    const price = shown(priceOf(kit.random, item), "0.00");
    return putRow(sheet, 1 + index, 0, [item, kit.random.pick(TAX), price]);
  });
  return `Prices!${absolute(span(rows.flat()))}`;
}

/** What the kitchen has to know of a dessert, at the right of its lines. */
const facts = (made: MadeRecipe): Said[] => [
  { label: "Freezes from (°C)", states: "freezing point", as: "formula" },
  {
    label: "Frozen at −14 °C, of all the water (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -14 },
  },
  { label: "Water in the batch (g)", states: "water", as: "formula", format: "0" },
  {
    label: "Sugars to 100 g water (g)",
    ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
  ...alcoholIn(made, {
    ...{ label: "Alcohol in the batch (g)", states: "alcohol", as: "typed", decimals: 1 },
  }),
];

interface Block {
  readonly top: number;
  readonly prices: string;
}

const HEADS = ["Qty", "Unit", "Item", "£/kg", "£", "Allergens"];

/** The lines of a dessert: quantities, units, items, costs; gives what all of it costs, too. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { top, prices }: Block) {
  const heads = putRow(sheet, top + 1, 0, HEADS);
  const rows = made.lines.map(({ allergen }, index) => {
    const told = made.flagged ? allergen?.en : undefined;
    const contents = [made.grams[index], "g", made.names[index], undefined, undefined, told];
    return putRow(sheet, top + 2 + index, 0, contents);
  });
  const [amounts, unitCells] = [columnOf(rows, 0), columnOf(rows, 1)];
  const names = columnOf(rows, 2);
  const found = { column: 3, heading: heads[3]!, fixed: [], format: "0.00" };
  const costs = { column: 4, heading: heads[4]!, fixed: [], format: "0.00" };
  beside(kit, names, found, (name) => `=VLOOKUP(${name},${prices},3,FALSE)`);
  const priced = (amount: string) => `=${amount}*${amount.replace("A", "D")}/1000`;
  const money = beside(kit, amounts, costs, priced);
  const row = top + 2 + rows.length;
  const total = sumOf(kit, sheet, { row, column: 0 }, amounts);
  putRow(sheet, row, 1, ["g", "Batch"]);
  const cost = sumOf(kit, sheet, { row, column: 4 }, money, "0.00");
  const recipe = markRecipe(kit, made, { names, amounts, unitCells, unit: "g", total });
  if (made.flagged) recipe.flags.push(...columnOf(rows, 5));
  return { recipe, row, cost };
}

/** One dessert with what the kitchen has to know; gives the next free row and what it costs. */
function dessert(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, block: Block) {
  const { top } = block;
  put(sheet, top, 0, made.title);
  const { recipe, row, cost } = lines(kit, sheet, made, block);
  const end = say(sheet, recipe, { row: top + 2, column: 7 }, facts(made));
  nameTarget(sheet, recipe, { row: end, column: 7, label: "Should come out as" });
  const below = tell(kit, sheet, recipe, { row: row + 1, column: 2, as: "sentence" });
  return { next: Math.max(below, end + 1) + 2, cost };
}

/** A buffet with three desserts, priced, and the drinks that go with them. */
export function buffet(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Buffet");
  put(sheet, 0, 0, "Summer buffet, frozen table");
  const mades = kit.make(3);
  const prices = priceList(kit, [...new Set(mades.flatMap(({ names }) => names))]);
  let top = 2;
  const costs = mades.map((made) => {
    const { next, cost } = dessert(kit, sheet, made, { top, prices });
    top = next;
    return cost;
  });
  put(sheet, top, 2, "All three (£)");
  put(sheet, top, 4, shown(`=${costs.map(a1).join("+")}`, "0.00"));
  note(kit, sheet, top + 2, 0, "Two coolboxes, dry ice from the harbour, gloves!");
  const warning = bar(kit);
  for (const { flags, made } of marked.recipes) if (made.flagged) flags.push(warning);
}
