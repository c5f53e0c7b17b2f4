import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { about, declare, readings, type Voice } from "./own";

const VOICE: Voice = {
  lead: "Ask-me card: contains",
  honey: "Honey in this one, not for babies under 12 months.",
  alcohol: "Alcohol in this one: over-18s only, not if pregnant or driving home.",
  nuts: "Whole nuts, a choking hazard for under-fives.",
  egg: "Raw egg yolk: take the mix to 71 °C, or use pasteurised yolk.",
};

const PACKS = [500, 1000, 1000, 2000, 5000];

/** What is decided before: fill, packaging, price at the hatch. */
function decided(kit: Kit, sheet: CorpusSheet): readonly [Spot, Spot, Spot] {
  const { random } = kit;
  const at = (row: number, bare: string, unit: string, value: number, format: string) =>
    input(
      kit,
      sheet,
      { row, column: 0 },
      { ...{ label: `${bare} (${unit})`, bare }, value, format },
    );
  return [
    at(2, "Fill per tub", "g", random.pick([85, 95, 100]), "0"),
    at(3, "Tub, lid, wooden spoon", "£", random.whole(18, 34) / 100, "0.00"),
    at(4, "Price at the hatch", "£", random.whole(10, 14) / 4, "0.00"),
  ];
}

/** The mix with what it costs. */
function priced(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const { random } = kit;
  const list = listed(
    sheet,
    made,
    { row: 6, column: 0 },
    {
      heads: ["What goes in", "Pack (g)", "Pack price (£)", "Goes in (g)", "Costs us (£)"],
      cells: (name, grams, index) => {
        const pack = random.pick(PACKS);
        const price = Math.max(0.01, (usualPrice(random, made.lines[index]!.en) * pack) / 1000);
        return [name, pack, shown(Number(price.toFixed(2)), "0.00"), grams];
      },
      amount: 3,
    },
  );
  const { heads, names, amounts, end } = list;
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1({ ...spot, column: 2 })}*${a1(spot)}/${a1({ ...spot, column: 1 })}`,
  });
  put(sheet, end, 0, "The whole mix");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const amountLabel = heads[3]!;
  return { recipe: markRecipe(kit, made, { names, amounts, total, amountLabel, unit: "g" }), cost };
}

/** From the mix to one tub; gives the next free row. */
function perTub(
  sheet: CorpusSheet,
  total: Spot,
  cost: Spot,
  [fill, pack, price]: readonly [Spot, Spot, Spot],
): number {
  const row = total.row + 2;
  const line = (step: number, label: string, formula: string, format: string): Spot =>
    putRow(sheet, row + step, 0, [label, shown(formula, format)])[1]!;
  const tubs = line(0, "Tubs out of it", `=${a1(total)}/${fixed(fill)}`, "0.0");
  const each = line(1, "One tub costs (£)", `=${a1(cost)}/${a1(tubs)}+${fixed(pack)}`, "0.00");
  const kept = line(2, "We keep on one (£)", `=${fixed(price)}-${a1(each)}`, "0.00");
  line(3, "That is, of the price", `=${a1(kept)}/${fixed(price)}`, "0%");
  return row + 5;
}

const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "Starts to freeze at (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Water, all told (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Dissolved in that water (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Water that is ice at −16 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
  ...ofAlcohol(made, "Alcohol in the mix (g)"),
];

/** The cabinet under the bar, a show a row. */
function cabinet(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 15, 6, ["Show", "Cabinet before (°C)", "Cabinet after (°C)"]);
  ["Tue", "Wed", "Thu", "Fri", "Sat mat", "Sat eve"].forEach((show, index) =>
    put(sheet, 16 + index, 6, show),
  );
  readings(kit, sheet, heads[1]!, [6, -20, -17]);
  readings(kit, sheet, heads[2]!, [6, -17, -14]);
}

function aside(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe): void {
  put(sheet, 6, 6, "About the mix");
  const next = say(sheet, recipe, { row: 7, column: 6 }, answers(recipe.made));
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Should eat like" });
  cabinet(kit, sheet);
}

/** A bar manager who sells ices in the interval. */
function theatre(kit: Kit): void {
  const made = called(about(kit.make(1)[0]!, 3000), { sugar: "caster sugar" });
  const sheet = addSheet(kit.marked.book, "Interval tubs");
  put(sheet, 0, 0, `Interval tubs: ${made.title}`);
  const settled = decided(kit, sheet);
  const { recipe, cost } = priced(kit, sheet, made);
  const next = perTub(sheet, recipe.total!, cost, settled);
  aside(kit, sheet, recipe);
  const last = declare(sheet, recipe, { row: next, column: 0 }, VOICE);
  note(kit, sheet, last + 1, 0, "Prices off the March invoices, before VAT.");
}

export const theatres: readonly Layout[] = [
  { name: "theatre bar, interval tubs and what is kept", language: "en", build: theatre },
];
