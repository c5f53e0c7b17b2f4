import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { facts, labelAt, ofAlcohol } from "./words";

const SACKS = [0.5, 1, 2.5, 5, 10];

/** The size of a pack and its price. */
function pack({ random }: Kit, name: string): readonly Content[] {
  if (name === "water") return [1, shown(0, "0.00")];
  const size = random.pick(SACKS);
  return [size, shown(Math.round(size * random.whole(120, 1100)) / 100, "0.00")];
}

/** What the pack costs, what the kilo costs, what we take of it. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Item", "Pack (kg)", "Pack price (£)", "£ per kg", "We use (g)", "Costs us (£)"],
      cells: (name, grams) => [name, ...pack(kit, name), undefined, grams],
      amount: 4,
    },
  );
  const { heads, rows, amounts, end } = list;
  const perKilo = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/${a1({ ...spot, column: 1 })}`,
  });
  const costs = beside(kit, heads[5]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(spot)}/1000*${a1(perKilo[index]!)}`,
  });
  put(sheet, end, 0, "Whole batch");
  const total = sumOf(kit, sheet, { row: end, column: 4 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 5 }, costs, "0.00");
  return { ...list, total, cost };
}

/** From the batch to one pop on its stick, right of the list. */
function perPop(kit: Kit, sheet: CorpusSheet, total: Spot, cost: Spot): void {
  const { random } = kit;
  put(sheet, 3, 7, "One pop");
  const value = random.pick([70, 75, 85]);
  const words = { label: "Fill of the mould (g)", bare: "Fill of the mould", value };
  const mould = input(kit, sheet, { row: 4, column: 7 }, words);
  const money = (pence: number) => shown(pence / 100, "0.00");
  const [stick, bag, price] = facts(sheet, { row: 5, column: 7 }, [
    ["Stick (£)", money(random.whole(2, 4))],
    ["Paper bag (£)", money(random.whole(3, 6))],
    ["Sold at (£)", money(50 * random.whole(5, 8))],
  ]);
  const mix = `${fixed(cost)}*${fixed(mould)}/${fixed(total)}`;
  const [pops, each] = facts(sheet, { row: 9, column: 7 }, [
    ["Pops from the batch", shown(`=${a1(total)}/${a1(mould)}`, "0.0")],
    ["One costs us (£)", shown(`=${mix}+${a1(stick!)}+${a1(bag!)}`, "0.00")],
  ]);
  const left = `=${a1(price!)}-${a1(each!)}`;
  facts(sheet, { row: 11, column: 7 }, [
    ["Left over from each (£)", shown(left, "0.00")],
    ["Left over from the batch (£)", shown(`=${a1(pops!)}*(${left.slice(1)})`, "0.00")],
  ]);
}

function answers(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  return say(sheet, recipe, { row, column: 0 }, [
    { label: "Mix starts to freeze at (°C)", states: "freezing point", as: "typed", decimals: 1 },
    {
      label: "Ice in the pop at −18 °C (% of its weight)",
      ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
    },
    { label: "Sugar (% of the weight)", states: "sugar share", as: "typed" },
    { label: "Water, wherever it comes from (g)", states: "water", as: "typed", decimals: 0 },
    ...ofAlcohol(recipe.made, "Pure alcohol in the batch (g)"),
  ]);
}

/** What a pop costs that is sold from a bicycle. */
function iceBike(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Costs");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, "Ice bike");
  putRow(sheet, 1, 0, ["Flavour", made.title]);
  const { heads, names, amounts, end, total, cost } = lines(kit, sheet, made);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[4]!, total },
  });
  perPop(kit, sheet, total, cost);
  let next = answers(sheet, recipe, Math.max(end + 2, 15));
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "Texture we want" });
  next = labelAt(sheet, recipe, { row: next, column: 0 }, "Contains:");
  note(kit, sheet, next + 1, 0, "Prices from the cash and carry, start of June.");
}

/** Somebody who sells pops from a bicycle. */
export const iceBikes: readonly Layout[] = [
  { name: "ice bike, packs to the price of a pop", language: "en", build: iceBike },
];
