import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed, type Listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { line, readings, WARNS } from "./words";

const HEADS = [
  ...["Raw material", "One batch (g)", "To weigh out (g)", "£/kg", "Batch (£)", "Share of cost"],
];

const KNOWN: readonly Said[] = [
  { label: "Starts to freeze at", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Drop against plain water", inCell: "K", states: "depression", as: "formula" },
  { label: "Water in a batch", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    label: "Water that is ice at −13 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  },
];

interface Costed {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
  readonly end: number;
}

/** Costs and shares beside the lines, sums below. */
function costed(kit: Kit, sheet: CorpusSheet, list: Listed, made: MadeRecipe, batches: Spot) {
  const { heads, names, amounts, end } = list;
  const scaled = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "#,##0", fixed: [batches] },
    content: (spot) => `=${a1(spot)}*${fixed(batches)}`,
  });
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 3 })}`,
  });
  put(sheet, end, 0, "Into the machine");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "#,##0");
  sumOf(kit, sheet, { row: end, column: 2 }, scaled, "#,##0");
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const shares = beside(kit, heads[5]!, costs, {
    ...{ sheet, format: "0%", fixed: [cost] },
    content: (spot) => `=${a1(spot)}/${fixed(cost)}`,
  });
  sumOf(kit, sheet, { row: end, column: 5 }, shares, "0%");
  const cells = { names, amounts, alsoAmounts: scaled, unit: "g", total } as const;
  return { recipe: markRecipe(kit, made, { ...cells, amountLabel: heads[1]! }), cost, end };
}

/** What a scoop costs and what it leaves; gives the next free row. */
function scoops(kit: Kit, sheet: CorpusSheet, { recipe, cost, end }: Costed, scoop: Spot) {
  const at = (step: number) => ({ row: end + 2 + step, column: 0 });
  const money = (step: number, label: string, pounds: number) =>
    putRow(sheet, at(step).row, 0, [label, shown(pounds, "0.00")])[1]!;
  const board = money(0, "Scoop on the board (£)", kit.random.whole(9, 14) / 4);
  const cone = money(1, "Cone and napkin (£)", kit.random.whole(6, 14) / 100);
  const count = `=${a1(recipe.total!)}/${a1(scoop)}`;
  const scooped = line(sheet, at(2), ["Scoops to a batch", count, "0"]);
  const each = `=${a1(cost)}/${a1(scooped)}+${a1(cone)}`;
  const spent = line(sheet, at(3), ["A scoop costs (£)", each, "0.00"]);
  line(sheet, at(4), ["Gross profit on a scoop (£)", `=${a1(board)}-${a1(spent)}`, "0.00"]);
  return at(6).row;
}

/** One flavour, from the day's orders to the profit on a scoop. */
function costing(kit: Kit): void {
  const { random } = kit;
  const own = { sugar: "caster sugar", "skim milk powder": "dried skimmed milk" };
  const made = called(upTo(kit.make(1)[0]!, 3500), own);
  const sheet = addSheet(kit.marked.book, "Costing");
  put(sheet, 0, 0, `Harbour parlour / ${made.title} / recosted after the spring price list`);
  const batches = putRow(sheet, 2, 0, ["Batches for the bank holiday", random.whole(2, 7)])[1]!;
  const scoop = input(
    kit,
    sheet,
    { row: 3, column: 0 },
    {
      ...{ label: "Level scoop (g)", bare: "Level scoop", value: random.pick([65, 70, 75, 80]) },
    },
  );
  const list = listed(
    sheet,
    made,
    { row: 9, column: 0 },
    {
      heads: HEADS,
      cells: (name, grams, index) => {
        const price = shown(usualPrice(random, made.lines[index]!.en), "0.00");
        return [name, shown(grams, "#,##0"), undefined, price];
      },
    },
  );
  const all = costed(kit, sheet, list, made, batches);
  const next = say(sheet, all.recipe, { row: 2, column: 3 }, KNOWN);
  nameTarget(sheet, all.recipe, { row: next, column: 3, label: "Meant to be" });
  const below = scoops(kit, sheet, all, scoop);
  const last = tellIn(sheet, all.recipe, { row: below, column: 0 }, WARNS);
  readings(
    kit,
    sheet,
    { row: 9, column: 7 },
    {
      heads: ["Dipping cabinet", "Probe (°C)"],
      when: ["Fri open", "Fri close", "Sat open", "Sat close", "Sun open"],
      tenths: [-142, -121],
    },
  );
  note(kit, sheet, last + 1, 0, "Prices without VAT. Dairy comes on Tuesdays and Fridays.");
}

/** An ice parlour that counts its pennies. */
export const parlourCostings: readonly Layout[] = [
  { name: "harbour parlour, batch costing and profit on a scoop", language: "en", build: costing },
];
