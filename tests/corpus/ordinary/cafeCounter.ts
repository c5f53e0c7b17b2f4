import { a1, addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { SHOP } from "./voices";
import { pricesOf, table } from "./words";

type PriceOf = ReturnType<typeof pricesOf>;

const ANSWERS: readonly Said[] = [
  { label: "Freezing point", inCell: "°C", states: "freezing point", as: "formula" },
  {
    label: "Frozen water at −14 °C, of all its water",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  },
  {
    label: "Sugars to 100 g of water",
    ...{ inCell: "g", states: "sugar per 100 g water", as: "typed", decimals: 1 },
  },
];

/** One flavour with its costs, its answers at the right; gives the next free row. */
function flavour(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  top: number,
  priceOf: PriceOf,
): number {
  put(sheet, top, 0, made.title.toUpperCase());
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Grams", "Item", "Price per kg", "Cost in this tub"],
      cells: (item, grams, index) => [grams, item, shown(priceOf(made, index), "0.00")],
      ...{ name: 1, amount: 0 },
    },
  );
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 2 })}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "full tub");
  sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const cells = { names, amounts, total, amountLabel: heads[0]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  const next = say(sheet, recipe, { row: top + 2, column: 5 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Goal" });
  return tellIn(sheet, recipe, { row: end + 1, column: 0 }, SHOP) + 1;
}

const HOURS = [
  ["Open", "from", "to"],
  ["Tue to Fri", "9 am", "6 pm"],
  ["Sat", "9 am", "5 pm"],
  ["Sun", "11 am", "5 pm"],
  ["Mon", "closed"],
];

/** What is in the counter this season, one flavour under the other. */
function counter(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ice cream counter");
  putRow(sheet, 0, 0, ["Flavours this season", undefined, "all prices in €"]);
  const words = { sugar: "granulated sugar", "cream 35 % fat": "whipping cream 35 %" };
  let row = 2;
  const priceOf = pricesOf(kit);
  for (const made of kit.make(3)) {
    row = flavour(kit, sheet, called(upTo(made, 2500), words), row, priceOf);
  }
  note(kit, sheet, row, 0, "Wipe the glass before opening. Change scoops with every new tub.");
  table(sheet, { row: 2, column: 9 }, HOURS);
}

/** A café's counter. */
export const cafeCounters: readonly Layout[] = [
  { name: "café counter, three flavours down one sheet", language: "en", build: counter },
];
