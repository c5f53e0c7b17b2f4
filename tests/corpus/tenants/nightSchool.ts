import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofSpirit, perKilo, tellInRows } from "./words";

const HEADS = ["Shopping", "Pack weighs (g)", "Pack price (£)", "We use (g)", "Our share (£)"];

const said = (made: MadeRecipe): readonly Said[] => [
  { label: "Starts to freeze at", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Sugar per 100 g water", inCell: "g", states: "sugar per 100 g water", as: "typed" },
  { label: "Water all told", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "Ice at −18 °C, of the whole mix", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
  ...ofSpirit(made, { label: "Alcohol", inCell: "g" }),
];

/** A pack from the shop and what the receipt says. */
function pack(kit: Kit, made: MadeRecipe, index: number): [number, number] {
  const { en } = made.lines[index]!;
  const size = en === "water" ? 1000 : kit.random.pick([250, 500, 1000, 1500]);
  const price = perKilo(kit.random, en);
  return [size, Math.round((price * size) / 10) / 100];
}

/** What goes into the bowls and what of the receipt that is. */
function bill(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const place = { row: 6, column: 0 };
  const { heads, rows, names, amounts, end } = listed(sheet, made, place, {
    heads: HEADS,
    cells: (name, grams, index) => {
      const [size, price] = pack(kit, made, index);
      return [name, size, shown(price, "0.00"), grams];
    },
    amount: 3,
  });
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (used, index) => `=${a1(used)}/${a1(rows[index]![1]!)}*${a1(rows[index]![2]!)}`,
  });
  put(sheet, end, 0, "Altogether");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const lines = { names, amounts, total, amountLabel: heads[3]!, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, lines), cost };
}

/** What each of the evening pays; gives the next free row. */
function each(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, cost: Spot): number {
  const [people, tub, room] = [2, 3, 4].map((row) => ({ sheet: sheet.name, row, column: 1 })) as [
    ...[Spot, Spot, Spot],
  ];
  const row = recipe.total!.row + 2;
  const line = (step: number, label: string, formula: string, format: string) =>
    putRow(sheet, row + step, 0, [label, shown(formula, format)]);
  line(0, "Tubs we can fill", `=${a1(recipe.total!)}/${a1(tub)}`, "0.0");
  const fee = `=(${a1(cost)}+${a1(room)})/${a1(people)}`;
  line(1, "Each person pays (£)", fee, "0.00");
  return row + 3;
}

/** An evening's shopping, shared by those who come. */
function nightSchool(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Thursday evening");
  const made = called(kit.make(1)[0]!, { sugar: "caster sugar", water: "tap water" });
  put(sheet, 0, 0, `Night school, week ${random.whole(2, 9)}: ${made.title}`);
  putRow(sheet, 2, 0, ["People signed up", random.whole(6, 14)]);
  const words = { label: "Take-home tub (g)", bare: "Take-home tub" };
  input(kit, sheet, { row: 3, column: 0 }, { ...words, value: random.pick([150, 180, 200]) });
  putRow(sheet, 4, 0, ["Kitchen hire (£)", shown(random.pick([12, 15, 18.5]), "0.00")]);
  const { recipe, cost } = bill(kit, sheet, made);
  const next = each(kit, sheet, recipe, cost);
  const below = say(sheet, recipe, { row: 6, column: 6 }, said(made));
  nameTarget(sheet, recipe, { row: below, column: 6, label: "We want it to be" });
  const last = tellInRows(sheet, recipe, { row: next, column: 0 }, "Tell the class, contains");
  note(kit, sheet, last + 1, 0, "Remind them to bring a cool bag.");
}

/** A tutor of a night school. */
export const nightSchools: readonly Layout[] = [
  { name: "night school, the shopping shared out", language: "en", build: nightSchool },
];
