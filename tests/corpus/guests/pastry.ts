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
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { bottles } from "./bottles";
import { larder } from "./larder";
import { plates } from "./plates";

const JUICES = [
  { name: "clear tomato water", sugars: 3.4, fat: 0, protein: 0.6, inert: 1.1 },
  { name: "cucumber juice", sugars: 1.8, fat: 0.1, protein: 0.6, inert: 1.2 },
  { name: "beetroot juice", sugars: 8.1, fat: 0.1, protein: 1.2, inert: 1.3 },
];

type Lines = readonly (readonly [name: string, grams: number])[];

const TOMATO: Lines = [
  ["clear tomato water", 720],
  ["sugar", 70],
  ["dextrose monohydrate", 60],
  ["sea salt", 7],
  ["lemon juice", 20],
];
const CUCUMBER: Lines = [
  ["cucumber juice", 640],
  ["sugar", 105],
  ["dextrose monohydrate", 40],
  ["lime juice", 35],
  ["gin 40 %", 30],
];

interface Side {
  readonly sheet: CorpusSheet;
  readonly left: number;
  readonly bottom: number;
}

/** One sorbet: what goes into a beaker, and into all of them. */
function beakers(kit: Kit, title: string, list: Lines, { sheet, left, bottom }: Side) {
  putRow(sheet, 2, left, [title, "beakers:"]);
  const many = put(sheet, 2, left + 2, kit.random.whole(2, 6));
  const heads = putRow(sheet, 3, left, ["1 beaker, g", "what", "tonight, g"]);
  const rows = list.map(([name, grams], index) => putRow(sheet, 4 + index, left, [grams, name]));
  const [amounts, names] = [columnOf(rows, 0), columnOf(rows, 1)];
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [many] },
    content: (spot) => `=${a1(spot)}*${fixed(many)}`,
  });
  put(sheet, bottom, left + 1, "to the line");
  const total = sumOf(kit, sheet, { row: bottom, column: left }, amounts);
  sumOf(kit, sheet, { row: bottom, column: left + 2 }, alsoAmounts, "0");
  return { names, amounts, alsoAmounts, total, amountLabel: heads[0]! };
}

/** A sorbet of our own juices, its freezing point by their table; gives its amounts. */
function savoury(kit: Kit, title: string, list: Lines, side: Side, own: string): Spot[] {
  const { sheet, left, bottom } = side;
  const { names, amounts } = beakers(kit, title, list, side);
  const call = `=RIME.FREEZINGPOINT(${span(names)},${span(amounts)},Juices!${own})`;
  putRow(sheet, bottom + 2, left, ["freezes from, °C", shown(call, "0.0")]);
  return amounts;
}

/** The alcohol of the last line, which is a spirit. */
function strength(kit: Kit, grams: Spot, { sheet, left, bottom }: Side): void {
  const [, abv] = putRow(sheet, bottom + 3, left, ["gin, % vol", 40]) as [Spot, Spot];
  const weight = shown(`=RIME.ABVTOMASSFRACTION(${a1(abv)})*${a1(grams)}`, "0.0");
  const [, alcohol] = putRow(sheet, bottom + 4, left, ["alcohol in a beaker, g", weight]);
  kit.marked.alcohols.push({ grams, abv, alcohol: alcohol! });
}

const CHARACTER: readonly Said[] = [
  { label: "freezes from, °C", states: "freezing point", as: "formula", format: "0.0" },
  {
    ...{ label: "ice in the beaker at −20 °C, % of the mix", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -20, decimals: 0 },
  },
  { label: "pure alcohol in a beaker, g", states: "alcohol", as: "typed", decimals: 1 },
  { label: "dissolved solids in a beaker, g", states: "dissolved", as: "typed", decimals: 0 },
];

/** The sweet sorbet that comes before the dessert. */
function sweet(kit: Kit, made: MadeRecipe, side: Side): void {
  const { sheet, bottom, left: column } = side;
  const list = made.names.map((name, index) => [name, made.grams[index]!] as const);
  const lines = beakers(kit, `${made.title}, pre-dessert`, list, side);
  const recipe = markRecipe(kit, made, { ...lines, unit: "g" });
  let row = say(sheet, recipe, { row: bottom + 2, column }, CHARACTER);
  nameTarget(sheet, recipe, { row: row++, column, label: "on the pass" });
  row = tell(kit, sheet, recipe, { row: row + 1, column, as: "pair" });
  bottles(kit, sheet, row + 1, recipe);
}

/** Two savoury sorbets and a sweet one beside each other, by the beaker. */
function sorbets(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Beakers");
  const juices = addSheet(kit.marked.book, "Juices");
  put(juices, 0, 0, "What the juicer gives, g in 100 g");
  const own = larder(kit, juices, { row: 2, column: 0 }, JUICES);
  note(kit, juices, 7, 0, "Sugars by refractometer, the rest from tables.");
  put(sheet, 0, 0, "Tasting menu: sorbets by the beaker");
  const made = perKilogram(kit.make(1)[0]!);
  const side = { sheet, bottom: 5 + Math.max(5, made.names.length) };
  savoury(kit, "Tomato, second course", TOMATO, { ...side, left: 0 }, own);
  const second = { ...side, left: 4 };
  strength(kit, savoury(kit, "Cucumber and gin", CUCUMBER, second, own).at(-1)!, second);
  sweet(kit, made, { ...side, left: 8 });
}

/** Sheets of a restaurant's pastry. */
export const pastry: readonly Layout[] = [
  { name: "pastry section, savoury beakers", language: "en", build: sorbets },
  { name: "pastry section, plates tonight", language: "en", build: plates },
];
