import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { given } from "../lodgers/words";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { costsUnder, labelled, numbersUnder, pricesOf, readings, table } from "./words";

const VOICE: Voice = {
  lead: "On the tub label: contains",
  honey: "Contains honey, not suitable for babies under 12 months.",
  alcohol: "Alcohol inside: not for children, not in pregnancy, not if you are driving.",
  nuts: "Whole nuts inside: choking risk for children under 5.",
  egg: "Made with raw egg yolk: the mix goes to 71 °C, or the yolk is pasteurised.",
};

const SUPPLIERS = ["Cash and carry", "Market", "Village shop"];

interface Costed {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
  readonly cost: Spot;
}

/** The lines in kilos with what they cost. */
function costing(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Costed {
  const prices = pricesOf(kit, made);
  const from = (index: number): string => {
    if (made.names[index] === "tap water") return "Mains";
    const isMilk = made.lines[index]!.allergen?.en === "milk";
    return isMilk ? "Own dairy" : kit.random.pick(SUPPLIERS);
  };
  const { heads, names, amounts, rows, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Bought from", "Goes in", "Kilos", "£ a kilo", "£ in the churn"],
      cells: (item, grams, index) => [
        ...[from(index), item, shown(inUnit(grams, "kg"), "0.000"), shown(prices[index]!, "0.00")],
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  put(sheet, end, 1, "One churn");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, columnOf(rows, 2), "0.000");
  const plan = { price: 3, totalRow: end };
  const { total: cost } = costsUnder(kit, sheet, heads[4]!, amounts, plan);
  const cells = { names, amounts, unit: "kg", amountLabel: heads[2]!, total } as const;
  return { recipe: markRecipe(kit, made, cells), total, cost };
}

/** From the churn to the tub in the shop; gives the next free row. */
function tubs(kit: Kit, sheet: CorpusSheet, { total, cost }: Costed): number {
  const { random } = kit;
  const at = (step: number) => ({ row: total.row + 2 + step, column: 1 });
  const size = given(
    kit,
    sheet,
    [at(0).row, 1],
    [...(["Tub holds", "kg", random.pick([0.4, 0.5, 0.9]), "0.0"] as const)],
  );
  const work = labelled(sheet, at(1), "Labour and power, each churn (£)", random.whole(14, 30) / 2);
  const tub = labelled(sheet, at(2), "Tub, lid and label (£)", random.whole(24, 45) / 100);
  const count = labelled(sheet, at(3), "Tubs from a churn", `=${a1(total)}/${a1(size)}`, "0.0");
  const each = `=(${a1(cost)}+${a1(work)})/${a1(count)}+${a1(tub)}`;
  const costs = labelled(sheet, at(4), "A tub costs us (£)", each);
  const price = labelled(sheet, at(5), "Farm shop price (£)", random.whole(20, 32) / 4);
  labelled(sheet, at(6), "Margin on a tub (£)", `=${a1(price)}-${a1(costs)}`);
  return at(8).row;
}

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "Starts freezing at (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water in the churn (g)", states: "water", as: "typed", decimals: 0 },
  ...ofAlcohol(made, "Alcohol in the churn (g)"),
  {
    label: "Water frozen at −18 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** The freezers, read every morning. */
function freezers(kit: Kit, sheet: CorpusSheet, row: number): void {
  const [blast, chest] = [readings(kit, 6, [-24, -20]), readings(kit, 6, [-20, -17])];
  const days = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
  const { heads, columns } = table(
    sheet,
    { row, column: 6 },
    ["7 am", "Store room (°C)", "Farm shop chest (°C)"],
    days.map((day, index) => [day, blast[index], chest[index]]),
  );
  numbersUnder(kit, heads[1]!, columns[1]!, "temperature");
  numbersUnder(kit, heads[2]!, columns[2]!, "temperature");
}

/** One ice of a farm: what the churn costs, then the tub. */
function farmIce(kit: Kit): void {
  const words = { sugar: "granulated sugar", water: "tap water", "whole milk": "full-fat milk" };
  const made = called(upTo(kit.make(1)[0]!, 6000), words);
  const sheet = addSheet(kit.marked.book, "Costing");
  put(sheet, 0, 0, `${made.title}, farm ice kitchen`);
  putRow(sheet, 1, 0, ["Prices as of", "2 May"]);
  const costed = costing(kit, sheet, made);
  const { recipe } = costed;
  const next = tubs(kit, sheet, costed);
  put(sheet, 3, 6, "The mix itself");
  const right = say(sheet, recipe, { row: 4, column: 6 }, said(made));
  nameTarget(sheet, recipe, { row: right, column: 6, label: "Meant to be" });
  freezers(kit, sheet, right + 2);
  const last = tellIn(sheet, recipe, { row: next, column: 0 }, VOICE);
  note(kit, sheet, last + 1, 0, "Milk price changes in autumn, do this sheet again then.");
}

/** A farm that makes ice from its own milk. */
export const farmIceKitchens: readonly Layout[] = [
  { name: "farm ice kitchen, from the churn to the tub", language: "en", build: farmIce },
];
