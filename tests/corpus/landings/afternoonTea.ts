import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { kiloPrice } from "./words";

const VOICE: Voice = {
  lead: "For the waiting staff. Contains:",
  honey: "Honey: not to be offered for infants under 12 months.",
  alcohol: "Alcohol: do not serve to children, in pregnancy, or to drivers.",
  nuts: "Whole nuts: choking hazard, not to be given to children under 5.",
  egg: "Egg yolk: only pasteurised, or the mix held at 71 °C.",
};

const FACTS: readonly Said[] = [
  { label: "Freezing point, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water in the batch, g", states: "water", as: "typed", decimals: 0 },
  { label: "Depression, K", states: "depression", as: "formula" },
  {
    ...{ label: "Ice in the mix at −12 °C, %", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -12, decimals: 0 },
  },
  { label: "Sugars in the mix, % by mass", states: "sugar share", as: "typed", decimals: 1 },
];

interface Block {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
  readonly next: number;
}

/** The lines of one ice, its total over them. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number) {
  const heads = putRow(sheet, row + 1, 0, ["Item", "Qty (kg)", "Per kg (£)", "Line (£)"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, row + 3 + index, 0, [
      ...[name, shown(inUnit(made.grams[index]!, "kg"), "0.000")],
      shown(kiloPrice(kit, made.lines[index]!.en), "0.00"),
    ]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  put(sheet, row + 2, 0, "Batch");
  const total = sumOf(kit, sheet, { row: row + 2, column: 1 }, amounts, "0.000");
  const cost = sumOf(kit, sheet, { row: row + 2, column: 3 }, costs, "0.00");
  const cells = { names, amounts, total, amountLabel: heads[1]!, unit: "kg" } as const;
  return { recipe: markRecipe(kit, made, cells), cost, end: row + 3 + rows.length };
}

/** One ice with what the kitchen knows of it at the right. */
function block(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): Block {
  put(sheet, row, 0, made.title);
  const { recipe, cost, end } = lines(kit, sheet, made, row);
  const facts = [...FACTS, ...ofAlcohol(made, "Alcohol in the batch, g")];
  const said = say(sheet, recipe, { row: row + 1, column: 5 }, facts);
  nameTarget(sheet, recipe, { row: said, column: 5, label: "Served" });
  const told = tellIn(sheet, recipe, { row: end, column: 0 }, VOICE);
  return { recipe, cost, next: Math.max(told, said + 1) + 1 };
}

/** What a stand of small ices costs, from all blocks above. */
function perStand(kit: Kit, sheet: CorpusSheet, blocks: readonly Block[], row: number): void {
  const heads = putRow(sheet, row, 0, [
    "Per stand",
    "Quenelle (kg)",
    "Batch per kg (£)",
    "Cost (£)",
  ]);
  const rows = blocks.map(({ recipe, cost }, index) => {
    const perKilo = `=${a1(cost)}/${a1(recipe.total!)}`;
    const quenelle = shown(kit.random.pick([0.02, 0.025, 0.03]), "0.000");
    const cells = [recipe.made.title, quenelle, shown(perKilo, "0.00")];
    return putRow(sheet, row + 1 + index, 0, cells);
  });
  const costs = beside(kit, heads[3]!, columnOf(rows, 1), {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  const end = row + 1 + rows.length;
  put(sheet, end, 0, "Ices on one stand");
  sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  note(kit, sheet, end + 2, 0, "Quenelles go on frozen slates, two minutes before the tea.");
}

/** Three ices one under the other, then the stand that they go on. */
function afternoonTea(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ices for tea");
  put(sheet, 0, 0, "Pastry, afternoon tea: ices and what a stand costs");
  const words = { sugar: "caster sugar", "whole milk": "full-fat milk" };
  const mades = kit.make(3).map((made) => called(upTo(made, 3000), words));
  const blocks: Block[] = [];
  for (const made of mades) blocks.push(block(kit, sheet, made, blocks.at(-1)?.next ?? 2));
  perStand(kit, sheet, blocks, blocks.at(-1)!.next);
}

/** A hotel's pastry kitchen. */
export const afternoonTeas: readonly Layout[] = [
  { name: "hotel pastry, ices on the tea stand", language: "en", build: afternoonTea },
];
