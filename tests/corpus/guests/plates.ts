import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit } from "../kit";
import { columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { beside } from "../newcomers/words";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { priceFor } from "./prices";
import { costsOf, tellAt } from "./words";

/** What is weighed for the batch, and what it costs. */
function weighed(kit: Kit, sheet: CorpusSheet, amounts: readonly Spot[], made: MadeRecipe) {
  const words = { label: "Batch in the machine (g)", bare: "Batch in the machine", value: 2400 };
  const batch = input(kit, sheet, { row: 1, column: 0 }, words);
  const [scale, , price] = putRow(sheet, 4, 2, ["Scale (g)", "Price (£/kg)", "£"]);
  const alsoAmounts = beside(kit, scale!, amounts, {
    ...{ sheet, format: "0", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}`,
  });
  amounts.forEach(({ row }, index) =>
    put(sheet, row, 3, shown(priceFor(kit.random, made.names[index]!), "0.00")),
  );
  const costs = costsOf(kit, price!, alsoAmounts, { sheet, column: 3, per: "/1000" });
  return { alsoAmounts, costs };
}

/** The mix in shares of one, weighed out and priced for a batch. */
function mix(kit: Kit) {
  const sheet = addSheet(kit.marked.book, "Mix");
  const made = stillMet(perHundred(kit.make(1)[0]!));
  put(sheet, 0, 0, made.title);
  const temperatureC = kit.random.pick([-12, -13, -14]);
  const set = { label: "Drawer is set to (°C)", bare: "Drawer is set to", value: temperatureC };
  const temperature = input(kit, sheet, { row: 2, column: 0 }, set);
  const [, amountLabel] = putRow(sheet, 4, 0, ["Mise", "Part of the mix"]) as [Spot, Spot];
  const rows = made.names.map((name, index) =>
    putRow(sheet, 5 + index, 0, [name, shown(inUnit(made.grams[index]!, "fraction"), "0.0%")]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const { alsoAmounts, costs } = weighed(kit, sheet, amounts, made);
  const row = 5 + rows.length;
  put(sheet, row, 0, "Whole mix");
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts, "0.0%");
  const mass = sumOf(kit, sheet, { row, column: 2 }, alsoAmounts, "0");
  const cost = sumOf(kit, sheet, { row, column: 4 }, costs, "0.00");
  const lines = { names, amounts, alsoAmounts, amountLabel, total, unit: "fraction" } as const;
  const recipe = markRecipe(kit, made, lines);
  return { sheet, recipe, mass, cost, row, ice: { temperature, temperatureC } };
}

/** What the mix is like, under it. */
function character({ sheet, recipe, row, ice }: Mixed): void {
  const next = say(sheet, recipe, { row: row + 2, column: 0 }, [
    { label: "Freezing point (°C)", states: "freezing point", as: "formula", format: "0.0" },
    {
      ...{ label: "Water frozen in the drawer", states: "ice of water", as: "formula" },
      ...{ ...ice, percent: "format" },
    },
    { label: "Sugars, part of the mix", states: "sugar share", as: "typed", percent: "format" },
    { label: "Water in 100 g (g)", states: "water", as: "typed", decimals: 1 },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Texture we want" });
  tellAt(sheet, recipe, { row: next + 2, column: 0 }, "Tell the floor, the ice has");
}

const BESIDE: readonly (readonly [string, number, number, string?])[] = [
  ["poached rhubarb", 45, 5.4],
  ["oat crumb", 18, 4.1, "gluten (oats, wheat), milk"],
  ["meringue shards", 6, 3.8, "egg"],
  ["herb oil", 3, 22],
];

const HEADS = ["On the plate", "g", "£ per kg", "£ on the plate", "Allergens"];

type Mixed = ReturnType<typeof mix>;

/** What stands on the plate, the frozen part by the mix's sheet; gives the grams. */
function parts(kit: Kit, sheet: CorpusSheet, { mass, cost, recipe }: Mixed): Spot[] {
  const perKg = `=1000*Mix!${a1(cost)}/Mix!${a1(mass)}`;
  const lines = [
    [recipe.made.title.toLowerCase(), kit.random.pick([28, 35, 40]), shown(perKg, "0.00")],
    ...BESIDE.map(([what, grams, price]) => [what, grams, shown(price, "0.00")]),
  ];
  const rows = lines.map((each, index) => putRow(sheet, 3 + index, 0, each));
  BESIDE.forEach(([, , , words], index) => {
    if (words !== undefined) recipe.flags.push(put(sheet, 4 + index, 4, words));
  });
  return columnOf(rows, 1);
}

/** What one plate costs, and how many there are in a batch. */
function plate(kit: Kit, mixed: Mixed): void {
  const sheet = addSheet(kit.marked.book, "Plate");
  put(sheet, 0, 0, "Rhubarb plate, tonight");
  const heads = putRow(sheet, 2, 0, HEADS);
  const grams = parts(kit, sheet, mixed);
  const costs = costsOf(kit, heads[3]!, grams, { sheet, column: 2, per: "/1000" });
  put(sheet, 8, 0, "Food on the plate");
  const food = sumOf(kit, sheet, { row: 8, column: 3 }, costs, "0.00");
  const asked = ["Menu price without VAT (£)", shown(9.5, "0.00")];
  const price = putRow(sheet, 10, 0, asked)[1]!;
  putRow(sheet, 11, 0, ["Food, share of the price", shown(`=${a1(food)}/${a1(price)}`, "0.0%")]);
  const most = shown(`=Mix!${a1(mixed.mass)}/${a1(grams[0]!)}`, "0");
  putRow(sheet, 12, 0, ["Plates out of one batch", most]);
  putRow(sheet, 13, 0, ["Covers booked", kit.random.whole(28, 55)]);
  drawer(kit, sheet, 15);
}

/** What the probe read in the course of the evening. */
function drawer(kit: Kit, sheet: CorpusSheet, top: number): void {
  const heads = putRow(sheet, top, 0, ["Probe at", "Drawer (°C)", "Blast chiller (°C)"]);
  const rows = ["16:00", "18:30", "20:00", "22:15"].map((time, index): Spot[] => {
    const [drawn, blast] = [-kit.random.whole(26, 30) / 2, -kit.random.whole(60, 72) / 2];
    return putRow(sheet, top + 1 + index, 0, [
      time,
      ...[drawn, blast].map((each) => shown(each, "0.0")),
    ]);
  });
  [1, 2].forEach((at) =>
    kit.marked.numberColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[at]!, total: null, kind: "temperature" },
    }),
  );
  note(kit, sheet, top + 6, 0, "Door seal on the drawer is going, engineer booked for Monday.");
}

/** A mix and the plate that it goes on. */
export function plates(kit: Kit): void {
  const made = mix(kit);
  character(made);
  plate(kit, made);
}
