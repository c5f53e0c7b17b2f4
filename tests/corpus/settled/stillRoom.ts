import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { page } from "../page";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf } from "../strollers/words";
import { alsoAlcohol, table } from "./words";

const VOICE: Voice = {
  lead: "Allergens -",
  honey: "Honey: keep from infants under 12 months.",
  alcohol: "Contains alcohol: 18 and over, not for pregnant guests or drivers.",
  nuts: "Whole nuts: under-5s may choke.",
  egg: "Raw egg yolk: pasteurised, or brought to 71 °C.",
};

const OWN = { sugar: "granulated sugar", "vodka 40 %": "vodka 40% ABV", water: "drinking water" };

const SAID: readonly Said[] = [
  { label: "Freezing point", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Lowered by", inCell: "K", states: "depression", as: "typed" },
  { label: "Total water", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "In solution", inCell: "g", states: "dissolved", as: "formula", format: "0" },
  {
    ...{ label: "Ice in the sorbet at −15 °C", inCell: "% by mass" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

const ALCOHOL: Said = {
  ...{ label: "Alcohol", inCell: "g", states: "alcohol", as: "typed", decimals: 1 },
};

/** The list, a unit after each weight. */
function weighed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 1 },
    {
      heads: ["Ingredient", "Amount", "Unit", "Lot"],
      cells: (name, grams) => [name, grams, "g", `L${kit.random.whole(110, 990)}`],
    },
  );
  put(sheet, end + 1, 1, "Sum");
  const total = sumOf(kit, sheet, { row: end + 1, column: 2 }, amounts);
  put(sheet, end + 1, 3, "g");
  const cells = { names, amounts, unitCells: columnOf(rows, 2), amountLabel: heads[1]! };
  return markRecipe(kit, made, { ...cells, total, unit: "g" });
}

const BOTTLES = [
  ["Plum spirit", 42, 60],
  ["Apple liqueur", 18, 150],
  ["Gin, small batch", 44, 45],
  ["Cassis", 16, 120],
] as const;

/** The house bottles: what a tub takes of each, and the alcohol in that. */
function bottles(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Bottles");
  put(sheet, 0, 0, "What goes into a 2 kg tub, by bottle");
  const list = table(
    sheet,
    { row: 2, column: 0 },
    ["Bottle", "% vol", "Into the tub (g)", "Pure alcohol (g)", "Shelf"],
    BOTTLES.map(([bottle, abv, grams]) => [
      ...[bottle, abv, grams + 5 * kit.random.whole(-2, 4), undefined, kit.random.pick(["A", "B"])],
    ]),
  );
  const grams = columnOf(list.rows, 2);
  const alcohols = beside(kit, list.heads[3]!, grams, {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=${a1(spot)}*RIME.ABVTOMASSFRACTION(${a1({ ...spot, column: 1 })})`,
  });
  grams.forEach((spot, index) =>
    marked.alcohols.push({ grams: spot, abv: list.rows[index]![1]!, alcohol: alcohols[index]! }),
  );
  put(sheet, list.end + 1, 0, "All of them: adults only, not in pregnancy, not before driving.");
  note(kit, sheet, list.end + 2, 0, "Cassis is opened after the gin.");
}

/** The days on which guests come. */
function bookings(kit: Kit, sheet: CorpusSheet, row: number): void {
  const days = ["Fri 6 Oct", "Sat 7 Oct", "Fri 13 Oct"];
  const rows = days.map((day) => [day, kit.random.whole(8, 22), shown(14, "0.00")]);
  const list = table(sheet, { row, column: 6 }, ["Tour", "Guests", "£ each"], rows);
  put(sheet, list.end, 6, "guests booked");
  sumOf(kit, sheet, { row: list.end, column: 7 }, columnOf(list.rows, 1));
}

/** A sorbet for the tours, the bottles, and a second mix for those who drive. */
function stillRoom(kit: Kit): void {
  const [first, second] = madeOf(kit, 2, isAlcoholic) as [MadeRecipe, MadeRecipe];
  const made = called(first, OWN);
  const sheet = addSheet(kit.marked.book, "Tour sorbet");
  putRow(sheet, 0, 1, ["Still room", "rev. 6"]);
  put(sheet, 1, 1, made.title);
  const recipe = weighed(kit, sheet, made);
  bookings(kit, sheet, 3);
  const at: Spot = { ...recipe.total!, row: recipe.total!.row + 2, column: 1 };
  const next = say(sheet, recipe, at, alsoAlcohol(made, SAID, ALCOHOL));
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Texture" });
  tellIn(sheet, recipe, { row: next + 1, column: 1 }, VOICE);
  bottles(kit);
  page(kit, addSheet(kit.marked.book, "Second pan"), second, {
    titleGap: 1,
    list: {
      ...{ columns: ["amount", "name", "allergen"], unit: "kg", total: "pan", format: "0.000" },
      headings: { amount: "kg", name: "From the store", allergen: "Allergen" },
    },
    results: {
      place: "right",
      plans: [
        { states: "freezing point", as: "typed", decimals: 1, wording: 1 },
        { states: "sugar share", as: "typed", decimals: 1, wording: 1 },
      ],
    },
    ...{ target: "Texture", tell: "sentence", note: "Second pan only when the first is gone." },
  });
}

/** A small distillery with a tasting room. */
export const stillRooms: readonly Layout[] = [
  { name: "still room, the tour's sorbet and the bottles", language: "en", build: stillRoom },
];
