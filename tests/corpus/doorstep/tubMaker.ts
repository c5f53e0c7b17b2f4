import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { hundred } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { CHEF, perKilo, rowsAt } from "./words";

const SAID: readonly Said[] = [
  { label: "ice begins at, °C", states: "freezing point", as: "formula", format: "0.0" },
  {
    label: "sugars in the mix",
    ...{ states: "sugar share", as: "formula", percent: "format" },
  },
  {
    label: "frozen water at −18 °C, share of all water",
    ...{ states: "ice of water", as: "typed", percent: "format", temperatureC: -18 },
  },
];

/** From raw materials to the shop's shelf, pounds in the last column. */
function price(kit: Kit, sheet: CorpusSheet, cost: Spot, size: Spot, row: number): void {
  const { random } = kit;
  const pounds = (at: number, words: string, value: number | string): Spot =>
    putRow(sheet, row + at, 1, [words, undefined, undefined, shown(value, "0.00")])[3]!;
  const words = { label: "tub, net (g)", bare: "tub, net", value: random.pick([350, 400, 460]) };
  const net = input(kit, sheet, { row, column: 1 }, words);
  const parts = [
    pounds(1, "mix in it, £", `=${a1(cost)}/${fixed(size)}*${a1(net)}/1000`),
    pounds(2, "tub, lid, sleeve, £", random.whole(28, 44) / 100),
    pounds(3, "work, £", random.whole(60, 110) / 100),
    pounds(4, "cold store and van, £", random.whole(15, 35) / 100),
  ];
  put(sheet, row + 5, 1, "costs me, £");
  const whole = sumOf(kit, sheet, { row: row + 5, column: 4 }, parts, "0.00");
  const shop = pounds(6, "shop pays, £", random.whole(23, 31) / 4);
  pounds(7, "stays with me, £", `=${a1(shop)}-${a1(whole)}`);
}

/** Shares as fractions, grams of the run and pounds beside them. */
function run(kit: Kit, sheet: CorpusSheet): MarkedRecipe {
  const made = hundred(kit.make(1)[0]!);
  putRow(sheet, 0, 1, ["costing for", made.title]);
  const words = { label: "run (kg)", bare: "run", value: kit.random.pick([6, 10, 15]) };
  const size = input(kit, sheet, { row: 2, column: 1 }, words);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 1 },
    {
      heads: ["raw material", "part of 1", "weigh, g", "cost, £", undefined, "£ a kilo"],
      cells: (item, grams) => [
        ...[item, shown(inUnit(grams, "fraction"), "0.000"), undefined, undefined, undefined],
        shown(perKilo(kit, item), "0.00"),
      ],
    },
  );
  const grams = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [size] },
    content: (spot) => `=${a1(spot)}*${fixed(size)}*1000`,
  });
  const costs = beside(kit, heads[3]!, grams, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 6 })}`,
  });
  put(sheet, end + 1, 1, "check");
  const total = sumOf(kit, sheet, { row: end + 1, column: 2 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end + 1, column: 3 }, grams, "0");
  const cost = sumOf(kit, sheet, { row: end + 1, column: 4 }, costs, "0.00");
  price(kit, sheet, cost, size, end + 3);
  const lines = { names, amounts, alsoAmounts: grams, amountLabel: heads[1]!, total };
  return markRecipe(kit, made, { ...lines, unit: "fraction" });
}

/** A small maker's costing from the run to the shelf; stock and what the mix does on a second sheet. */
function tubMaker(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "tubs");
  const recipe = run(kit, sheet);
  const next = say(sheet, recipe, { row: 4, column: 9 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 9, label: "meant as" });
  tellIn(sheet, recipe, { row: next + 2, column: 9 }, CHEF);
  const store = addSheet(kit.marked.book, "cold store");
  putRow(store, 0, 0, ["shelf", "tubs in", "tubs out", "left"]);
  const rows = rowsAt(
    store,
    { row: 1, column: 0 },
    ["A", "B", "C", "D"].map((shelf) => [
      ...[shelf, kit.random.whole(40, 90), kit.random.whole(5, 35)],
    ]),
  );
  const left = beside(
    kit,
    { ...rows[0]![0]!, row: 0, column: 3 },
    rows.map((cells) => cells[1]!),
    {
      ...{ sheet: store, format: "0" },
      content: (spot) => `=${a1(spot)}-${a1({ ...spot, column: 2 })}`,
    },
  );
  put(store, 5, 0, "tubs");
  [1, 2].forEach((column) =>
    sumOf(
      kit,
      store,
      { row: 5, column },
      rows.map((cells) => cells[column]!),
    ),
  );
  sumOf(kit, store, { row: 5, column: 3 }, left);
  note(kit, store, 7, 0, "shelf D sticks, lift the door");
}

/** A maker of ice in tubs. */
export const tubMakers: readonly Layout[] = [
  { name: "tub maker, from the run to the shelf", language: "en", build: tubMaker },
];
