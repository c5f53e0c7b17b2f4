import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { larder } from "../guests/larder";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "Kindly inform guests, contains",
  honey: "Kindly note honey: not for infants under 12 months.",
  alcohol: "Kindly note alcohol: not for children, expecting mothers or guests who drive.",
  nuts: "Kindly note whole nuts: children under 5 may choke.",
  egg: "Raw yolk: cook to 71 °C or take pasteurised.",
};

const OWN = {
  ...{ "whole milk": "full cream milk", "desiccated coconut": "shredded coconut, unsweetened" },
  ...{ water: "filtered water", mango: "mango pulp", "lime juice": "fresh lime juice" },
};

const HOMEMADE = [
  { name: "jackfruit preserve, our own", sugars: 55, fat: 0, protein: 1, inert: 2 },
  { name: "nannari cordial, our own", sugars: 60, fat: 0, protein: 0, inert: 0 },
  { name: "passion fruit squash, our own", sugars: 42, fat: 0, protein: 0.5, inert: 0.5 },
];

/** What is kept in jars, and the plain ice made of it. */
function jars(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Jars in the pantry, grams in 100 g as per the bottling book");
  const own = larder(kit, sheet, { row: 2, column: 0 }, HOMEMADE);
  const heads = putRow(sheet, 8, 0, ["Ice from jars", "g"]);
  const lines = [
    ...HOMEMADE.map(({ name }) => [name, 10 * kit.random.whole(8, 18)] as const),
    ["filtered water", 10 * kit.random.whole(45, 60)] as const,
  ];
  const rows = lines.map((line, index) => putRow(sheet, 9 + index, 0, line));
  const end = 9 + rows.length;
  put(sheet, end, heads[0]!.column, "Total");
  sumOf(kit, sheet, { row: end, column: 1 }, columnOf(rows, 1));
  const both = `${span(columnOf(rows, 0))},${span(columnOf(rows, 1))},${own}`;
  const point = shown(`=RIME.FREEZINGPOINT(${both})`, "0.0");
  putRow(sheet, end + 1, 0, ["Freezing pt. (°C)", point]);
}

const said = (temperature: Spot, temperatureC: number): readonly Said[] => [
  { label: "Freezing pt. (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Depression (K)", states: "depression", as: "typed", decimals: 1 },
  { label: "Solids dissolved (g)", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Ice in one katori when served (% of the mix)", format: "0" },
    ...{ states: "ice of mix", as: "formula", temperature, temperatureC },
  },
];

/** Tonight's sweet: for the base recipe and for the guests who are in. */
function sweet(kit: Kit, sheet: CorpusSheet): void {
  const made = called(kit.make(1)[0]!, OWN);
  put(sheet, 0, 0, `Tonight: ${made.title}`);
  const value = kit.random.whole(8, 22);
  const at = (row: number) => ({ row, column: 0 });
  // How many there are has no unit that could be missing.
  put(sheet, 1, 0, "Guests in");
  const guests = put(sheet, 1, 1, value);
  const words = { label: "One katori (g)", bare: "One katori", value: 90 };
  const katori = input(kit, sheet, at(2), words);
  const celsius = -kit.random.whole(10, 13);
  const cold = { label: "Served at (°C)", bare: "Served at", value: celsius };
  const served = input(kit, sheet, at(3), cold);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 7, column: 0 },
    {
      ...{ heads: ["Item", "Base (g)", "Tonight (g)"], cells: (name, grams) => [name, grams] },
    },
  );
  put(sheet, end, 0, "Total");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const need = `=${a1(guests)}*${a1(katori)}/${a1(total)}`;
  const [, factor] = putRow(sheet, 5, 0, ["Base is multiplied by", shown(need, "0.00")]);
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [factor!] },
    content: (spot) => `=${a1(spot)}*${fixed(factor!)}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const lines = { names, amounts, alsoAmounts, total, unit: "g", amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: 7, column: 5 }, said(served, celsius));
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Should be" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
}

const MENU = [
  ["Mon", "puttu, kadala", "fish moilee"],
  ["Tue", "appam, stew", "avial, rice"],
  ["Wed", "idli, sambar", "chicken roast"],
  ["Thu", "dosa, chutney", "prawn ularthiyathu"],
];

/** The week's meals, with what the fridges read. */
function week(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 0, 0, ["Day", "Breakfast", "Dinner"]);
  MENU.forEach((line, index) => putRow(sheet, 1 + index, 0, line));
  readings(
    kit,
    sheet,
    { row: 0, column: 4 },
    {
      heads: ["Day", "Fridge (°C)", "Deep freezer (°C)"],
      labels: MENU.map(([day]) => day),
      ranges: [
        [2, 6],
        [-20, -16],
      ],
    },
  );
  note(kit, sheet, 7, 0, "Boat people want packed lunch on Wednesday.");
}

/** Tonight's sweet, the jars and the week. */
function homestay(kit: Kit): void {
  week(kit, addSheet(kit.marked.book, "Week"));
  sweet(kit, addSheet(kit.marked.book, "Sweet"));
  jars(kit, addSheet(kit.marked.book, "Jars"));
}

/** A homestay that cooks for its guests. */
export const homestays: readonly Layout[] = [
  { name: "homestay in Alappuzha, tonight's sweet and the jars", language: "en", build: homestay },
];
