import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { withLines, type MadeRecipe } from "../recipes";
import { columnOf } from "../kitchens/hand";
import { line, water } from "../stock";
import { pantry, type Shelf } from "./pantry";
import { beside, listed, warn } from "./words";

/** Water and salt for the tank, in grams. */
function brineOf({ random }: Kit): MadeRecipe {
  const waterGrams = 500 * random.whole(16, 30);
  const saltGrams = 50 * Math.round((waterGrams * random.between(0.25, 0.29)) / 50);
  const bare = { title: "Brine", language: "en", names: [], grams: [], lines: [] } as const;
  const parts = [water(waterGrams), line("salt", "Salz", saltGrams)];
  return withLines({ ...bare, target: null, flagged: true }, parts);
}

/** The strength of the brine in both ways. */
function strength({ marked }: Kit, sheet: CorpusSheet, { amounts, total }: MarkedRecipe): void {
  const [wet, salt] = amounts as [Spot, Spot];
  const by = (row: number, label: string, under: Spot): Spot => {
    const content = `=${a1(salt)}/${a1(under)}*100`;
    return putRow(sheet, row, 0, [label, shown(content, "0.0")])[1]!;
  };
  const perWater = by(7, "Salt to 100 g of water (g)", wet);
  const share = by(8, "Salt, % of the brine's weight", total!);
  marked.strengths.push({ sugar: salt, water: wet, perWater, share });
}

/** The brine in the dip tank, by the kilogram. */
function brine(kit: Kit, sheet: CorpusSheet): void {
  const made = brineOf(kit);
  const { heads, names, amounts, end } = listed(
    ...([sheet, made, { row: 2, column: 0 }] as const),
    { heads: ["Dip tank", "kg"], cells: (name, grams) => [name, shown(grams / 1000, "0.00")] },
  );
  put(sheet, end, 0, "tank holds");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.00");
  const lines = { names, amounts, total, amountLabel: heads[1]!, unit: "kg" } as const;
  const recipe = markRecipe(kit, made, lines);
  strength(kit, sheet, recipe);
  const freezing = { states: "freezing point", as: "formula", format: "0.0" } as const;
  const label = "Brine itself freezes at (°C)";
  say(sheet, recipe, { row: 9, column: 0 }, [{ label, ...freezing }]);
  note(kit, sheet, 11, 0, "Keep brine out of the moulds; gloves on, it burns.");
}

/** Trays through the tank, with the brine's temperature as each came out. */
function dips({ marked, random }: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 2, 3, ["Tray", "Minutes in", "Brine when it came out (°C)"]);
  const rows = Array.from({ length: 7 }, (_, index) =>
    putRow(sheet, 3 + index, 3, [
      ...[index + 1, random.whole(18, 27)],
      shown(-random.whole(22, 29) / 2, "0.0"),
    ]),
  );
  const spots = columnOf(rows, 2);
  marked.numberColumns.push({ spots, heading: heads[2]!, total: null, kind: "temperature" });
}

/** How much the moulds of the trays hold; gives the cell with it. */
function filling(kit: Kit, sheet: CorpusSheet): Spot {
  const { random } = kit;
  const holds = { label: "One mould takes (g)", bare: "One mould takes" };
  const place = { row: 2, column: 0 };
  const mould = input(kit, sheet, place, { ...holds, value: random.pick([60, 72, 85]) });
  const [, each] = putRow(sheet, 3, 0, ["Moulds in a tray", random.pick([12, 18, 26])]);
  const [, trays] = putRow(sheet, 4, 0, ["Trays to fill", random.whole(4, 9)]);
  const content = `=${a1(mould)}*${a1(each!)}*${a1(trays!)}`;
  return putRow(sheet, 5, 0, ["Mix for that (g)", shown(content, "0")])[1]!;
}

const KNOWN: readonly Said[] = [
  { label: "Mix begins to freeze at (°C)", states: "freezing point", as: "formula" },
  { label: "Lower than plain water by (K)", states: "depression", as: "typed" },
  { label: "Dissolved in the recipe (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Frozen by −12 °C, of all the water (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** The mix that is poured into the moulds. */
function pops(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Pops");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, `Poured this time: ${made.title}`);
  const wanted = filling(kit, sheet);
  const { heads, names, amounts, end } = listed(
    ...([sheet, made, { row: 7, column: 0 }] as const),
    {
      heads: ["In the jug", "Recipe (g)", "For the trays (g)"],
      cells: (name, grams) => [name, grams],
    },
  );
  put(sheet, end, 0, "makes");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [wanted, total] },
    content: (spot) => `=${a1(spot)}*${fixed(wanted)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const lines = { names, amounts, alsoAmounts, unit: "g", total } as const;
  const recipe = markRecipe(kit, made, { ...lines, amountLabel: heads[1]! });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, KNOWN);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Bite" });
  warn(sheet, recipe, { row: next + 2, column: 0 }, "Wrapper must say:");
}

const BOUGHT_IN: Shelf = {
  ...{ sheet: "Bought in", title: "Glazes by their labels, g in 100 g", source: "pail" },
  heads: [
    ...["Name", "Source", "Sugars (g)", "Water (g)", "Protein (g)", "Fat (g)", "Inert (g)"],
    "Allergens",
  ],
  items: ["berry glaze from the pail", "tropical glaze from the pail"],
  words: ["Coat for the pops", "Weight (g)", "For one pan", "Coat begins to freeze (°C)"],
};

/** Brine and pops of a small maker. */
export const moulds: readonly Layout[] = [
  {
    ...{ name: "dip tank and the pops in it", language: "en" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Brine");
      put(sheet, 0, 0, "Dip tank for the moulds");
      brine(kit, sheet);
      dips(kit, sheet);
      pops(kit);
      pantry(kit, BOUGHT_IN);
    },
  },
];
