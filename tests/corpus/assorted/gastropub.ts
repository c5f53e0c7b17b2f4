import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { ofAlcohol } from "../strollers/words";
import { aside, priceFor } from "./words";

const VOICE: Voice = {
  lead: "Allergen matrix:",
  honey: "honey, never to babies under 12 months.",
  alcohol: "alcohol, no children, no pregnant guests, no drivers.",
  nuts: "whole nuts, choking risk for children under 5.",
  egg: "raw yolk, bring to 71 °C or use pasteurised.",
};

const OWN = { sugar: "caster sugar", water: "tap water", "egg yolk": "egg yolks, pasteurised" };

const SAID: readonly Said[] = [
  { label: "Freezing point of the base", inCell: "°C", states: "freezing point", as: "typed" },
  {
    ...{ label: "Total water in the batch", inCell: "g" },
    ...{ states: "water", as: "formula", format: "0" },
  },
  {
    label: "Ice, of the whole mix, at −15 °C",
    ...{ inCell: "%", states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

const SUPPLIERS: readonly (readonly [RegExp, string])[] = [
  [/milk|cream|yolk|yogurt/, "dairy"],
  [/vodka/, "cellar"],
  [/sugar|sucrose|dextrose|syrup|salt|powder|acid|nuts|pistachios|inulin|honey/, "dry goods"],
  [/^water$/, "tap"],
];

const supplierOf = (en: string): string =>
  SUPPLIERS.find(([words]) => words.test(en))?.[1] ?? "market";

interface Costed {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** Grams, price and money of each line, the sums over the headings. */
function costed(kit: Kit, sheet: CorpusSheet): Costed {
  const made = called(kit.make(1)[0]!, OWN);
  putRow(sheet, 0, 0, ["DISH SPEC", made.title, undefined, "sheet 14"]);
  const { heads, rows, names, amounts } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Supplier", "Product", "g in spec", "£ per kg", "£ in spec"],
      cells: (item, grams, index) => [
        ...[supplierOf(made.lines[index]!.en), item, grams],
        shown(priceFor(kit, made.lines[index]!.en), "0.00"),
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1(rows[spot.row - 5]![3]!)}`,
  });
  put(sheet, 3, 1, "Whole spec");
  const total = sumOf(kit, sheet, { row: 3, column: 2 }, amounts);
  const cost = sumOf(kit, sheet, { row: 3, column: 4 }, costs, "0.00");
  const amountLabel = heads[2]!;
  return { recipe: markRecipe(kit, made, { names, amounts, unit: "g", total, amountLabel }), cost };
}

/** From the spec to the menu price. */
function menu(kit: Kit, sheet: CorpusSheet, { recipe, cost }: Costed, row: number): number {
  const at = (down: number) => ({ row: row + down, column: 1 });
  const given = (down: number, bare: string, unit: string, value: number, format = "0"): Spot =>
    input(kit, sheet, at(down), { label: `${bare} (${unit})`, bare, value, format });
  const waste = given(0, "Lost in the churn and on the spoon", "%", kit.random.pick([4, 5, 8]));
  const scoop = given(1, "One scoop", "g", kit.random.pick([50, 55, 60]));
  const sides = given(2, "Mint and a paper doily", "£", kit.random.whole(18, 45) / 100, "0.00");
  const price = given(3, "Menu price without VAT", "£", kit.random.whole(14, 22) / 4, "0.00");
  const worked = (down: number, label: string, formula: string, format: string): Spot =>
    putRow(sheet, row + down, 1, [label, shown(formula, format)])[1]!;
  const left = `${a1(recipe.total!)}*(1-${a1(waste)}/100)`;
  const scoops = worked(5, "Scoops we get", `=${left}/${a1(scoop)}`, "0.0");
  const each = worked(6, "A scoop costs (£)", `=${a1(cost)}/${a1(scoops)}`, "0.000");
  const plate = worked(7, "Two scoops, plated (£)", `=2*${a1(each)}+${a1(sides)}`, "0.00");
  worked(8, "Gross profit (%)", `=100*(${a1(price)}-${a1(plate)})/${a1(price)}`, "0.0");
  return row + 10;
}

const POURS: readonly (readonly [drink: string, abv: number])[] = [
  ["Coffee liqueur 20 %", 20],
  ["Sloe gin 26 %", 26],
  ["Spiced rum 35 %", 35],
];

/** What guests may have poured over it, and the warning that goes with it. */
function pours(kit: Kit, sheet: CorpusSheet, top: number, { flags }: MarkedRecipe): void {
  const heads = putRow(sheet, top, 0, ["Poured over", "ABV %", "Measure g", "Ethanol in it g"]);
  const rows = POURS.map(([drink, abv], index) =>
    putRow(sheet, top + 1 + index, 0, [drink, abv, kit.random.whole(20, 26)]),
  );
  const ethanol = beside(kit, heads[3]!, columnOf(rows, 2), {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=${a1(spot)}*RIME.ABVTOMASSFRACTION(${a1({ ...spot, column: 1 })})`,
  });
  rows.forEach(([, abv, grams], index) =>
    kit.marked.alcohols.push({ grams: grams!, abv: abv!, alcohol: ethanol[index]! }),
  );
  const words = "With a pour: alcohol, so no children, no pregnant guests, no drivers.";
  flags.push(put(sheet, top + 1 + rows.length, 0, words));
}

/** A pudding's specification with its money. */
function spec(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Spec 14");
  const list = costed(kit, sheet);
  const { recipe, cost } = list;
  const end = 6 + recipe.names.length;
  const share = put(sheet, 4, 5, "% of the money");
  const costs = recipe.amounts.map((spot) => ({ ...spot, column: 4 }));
  const spots = beside(kit, share, costs, {
    ...{ sheet, format: "0.0", fixed: [cost] },
    content: (spot) => `=100*${a1(spot)}/${fixed(cost)}`,
  });
  sumOf(kit, sheet, { row: 3, column: 5 }, spots, "0.0");
  const next = menu(kit, sheet, list, end);
  const said = [...SAID, ...ofAlcohol(recipe.made, "Pure alcohol in the batch", "g")];
  const under = say(sheet, recipe, { row: end, column: 4 }, said);
  nameTarget(sheet, recipe, { row: under, column: 4, label: "Hold it" });
  tellIn(sheet, recipe, { row: next, column: 0 }, VOICE);
  aside(
    sheet,
    { row: next + 2, column: 0 },
    ["Station", "Fri", "Sat", "Sun"],
    [
      ...[
        ["pass", "Lou", "Lou", "Kit"],
        ["puddings", "Kit", "Sam", "Sam"],
      ],
    ],
  );
  pours(kit, sheet, next + 6, recipe);
  note(
    kit,
    sheet,
    next + 12,
    0,
    "Prices from the February invoices. Next review when cream moves.",
  );
}

/** A pub that cooks. */
export const gastropubs: readonly Layout[] = [
  { name: "gastropub dish spec, gross profit on two scoops", language: "en", build: spec },
];
