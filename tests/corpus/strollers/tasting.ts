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
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { answersDown, placesOf, type Answer } from "../regulars/columns";
import { itemsOf, labelAt } from "./words";

const TOP = 4;

const ANSWERS: readonly Answer[] = [
  ["water all told, g", { states: "water", as: "formula", format: "0" }],
  ["freezing point, °C", { states: "freezing point", as: "typed", decimals: 1 }],
  ["drop below 0 °C, in K", { states: "depression", as: "formula", format: "0.0" }],
  ["sugars by weight, %", { states: "sugar share", as: "typed" }],
  [
    "ice, share of the spoonful at −12 °C, %",
    { states: "ice of mix", as: "typed", temperatureC: -12 },
  ],
  ["water frozen when served, %", { states: "ice of water", as: "formula", temperatureC: -12 }],
];

interface Grid {
  readonly names: readonly Spot[];
  readonly spoon: Spot;
  readonly served: Spot;
  readonly first: number;
}

/** The answers, the temperature of one read from its cell. */
const answersAt = (served: Spot): readonly Answer[] =>
  ANSWERS.map(([words, plan]) => {
    const isRead = plan.as === "formula" && plan.states === "ice of water";
    return [words, isRead ? { ...plan, temperature: served } : plan];
  });

/** One pre-dessert down its column, its share of the bowl in the next; gives its spoonfuls. */
function course(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, grid: Grid): Spot {
  const { names, spoon, served, first } = grid;
  put(sheet, TOP - 1, column, made.title);
  const [label, share] = putRow(sheet, TOP, column, ["grams", "% of bowl"]) as [Spot, Spot];
  const at = placesOf(sheet, names, made.names);
  const amounts = at.map((item, index) => put(sheet, names[item]!.row, column, made.grams[index]));
  const all = names.map((spot) => ({ ...spot, column }));
  const end = first + names.length;
  const total = sumOf(kit, sheet, { row: end, column }, all);
  const shares = all.map((spot) =>
    put(sheet, spot.row, column + 1, shown(`=100*${a1(spot)}/${fixed(total)}`, "0.0")),
  );
  kit.marked.formulaColumns.push({ spots: shares, heading: share, fixed: [total] });
  sumOf(kit, sheet, { row: end, column: column + 1 }, shares, "0.0");
  const spoons = put(sheet, end + 1, column, shown(`=${a1(total)}/${fixed(spoon)}`, "0"));
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((item) => names[item]!), amounts, unit: "g", amountLabel: label, total },
    shared: true,
  });
  const lines = `${absolute(span(names))},${span(all)}`;
  answersDown(sheet, recipe, answersAt(served), { row: end + 3, column, labels: 0 }, lines);
  nameTarget(sheet, recipe, { row: end + 9, column });
  labelAt(sheet, recipe, { row: end + 10, column }, "Contains");
  return spoons;
}

/** Four pre-desserts beside each other. */
function tasting(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Pre-desserts");
  const mades = kit.make(4).map((made) => called(made, { sugar: "caster sugar" }));
  const names = itemsOf(mades).map((item, index) => put(sheet, TOP + 1 + index, 0, item));
  put(sheet, 0, 0, "Pre-desserts for the tasting menu");
  const at = (row: number) => ({ row, column: 0 });
  const spoon = input(kit, sheet, at(1), {
    ...{ label: "one spoonful (g)", bare: "one spoonful", value: random.pick([18, 20, 25]) },
  });
  const served = input(kit, sheet, at(2), {
    ...{ label: "served at (°C)", bare: "served at", value: -12 },
  });
  put(sheet, TOP, 0, "into the machine");
  const end = TOP + 1 + names.length;
  putRow(sheet, end, 0, ["bowl"]);
  const heading = put(sheet, end + 1, 0, "spoonfuls");
  ANSWERS.forEach(([label], index) => put(sheet, end + 3 + index, 0, label));
  put(sheet, end + 9, 0, "meant for");
  put(sheet, end + 10, 0, "tell the waiters");
  const grid = { names, spoon, served, first: TOP + 1 };
  const spots = mades.map((made, index) => course(kit, sheet, made, 1 + 2 * index, grid));
  marked.formulaColumns.push({ spots, heading, fixed: [spoon] });
  note(kit, sheet, end + 12, 0, "Spin in this order, rinse the bowl before the nuts.");
}

/** A restaurant with a tasting menu. */
export const tastings: readonly Layout[] = [
  { name: "tasting menu, four bowls across with shares", language: "en", build: tasting },
];
