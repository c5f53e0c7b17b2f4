import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { ofAlcohol, upTo } from "../strollers/words";
import { CHEF, rowsAt, thermometer } from "./words";

const SAID: readonly Said[] = [
  { label: "starts freezing", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "below plain water", inCell: "K", states: "depression", as: "typed", decimals: 1 },
  {
    ...{ label: "water, fruit & dairy incl.", inCell: "g" },
    ...{ states: "water", as: "typed", decimals: 0 },
  },
];

/** Weighing list with the sum over it, Saturday's at the right of the names. */
function weighing(kit: Kit, sheet: CorpusSheet): MarkedRecipe {
  const made = called(upTo(kit.make(1)[0]!, 3500), {
    ...{ sugar: "caster sugar", water: "tap water", "lemon juice": "fresh lemon juice" },
  });
  put(sheet, 0, 1, `SWEET SECTION  ${made.title.toUpperCase()}`);
  const batches = putRow(sheet, 2, 1, ["Batches on Saturday", kit.random.pick([2, 3])])[1]!;
  const { heads, names, amounts } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Tue–Fri (kg)", undefined, "Sat (kg)"],
      cells: (item, grams) => [shown(inUnit(grams, "kg"), "0.000"), item],
      ...{ name: 1, amount: 0 },
    },
  );
  const saturday = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [batches] },
    content: (spot) => `=${a1(spot)}*${fixed(batches)}`,
  });
  const total = sumOf(kit, sheet, { row: 3, column: 0 }, amounts, "0.000");
  put(sheet, 3, 1, "all of it");
  sumOf(kit, sheet, { row: 3, column: 2 }, saturday, "0.000");
  const lines = { names, amounts, alsoAmounts: saturday, amountLabel: heads[0]!, total };
  return markRecipe(kit, made, { ...lines, unit: "kg" });
}

/** How many tins it fills. */
function tins(kit: Kit, sheet: CorpusSheet, total: Spot, row: number): void {
  const tin = input(
    kit,
    sheet,
    { row, column: 1 },
    {
      ...{ label: "one steel tin takes (kg)", bare: "one steel tin takes" },
      ...{ value: kit.random.pick([1.2, 1.8, 2.4]), format: "0.0" },
    },
  );
  putRow(sheet, row + 1, 1, ["tins needed", shown(`=${a1(total)}/${a1(tin)}`, "0.0")]);
}

/** Weighing list, answers below, fridges and shifts at the right. */
function sweetSection(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "sweets");
  const recipe = weighing(kit, sheet);
  const end = 6 + recipe.names.length;
  const next = say(sheet, recipe, { row: end, column: 1 }, [
    ...SAID,
    ...ofAlcohol(recipe.made, "pure alcohol", "g"),
    {
      ...{ label: "water that is ice in the −12 °C drawer", inCell: "%" },
      ...{ states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "should come out" });
  tins(kit, sheet, recipe.total!, next + 2);
  tellIn(sheet, recipe, { row: next + 5, column: 0 }, CHEF);
  put(sheet, 3, 6, "fridge book, this week");
  rowsAt(sheet, { row: 5, column: 6 }, [["Tue"], ["Wed"], ["Thu"], ["Fri"], ["Sat"]]);
  const range = (from: number, to: number) => [from, to] as const;
  const at = { row: 4, column: 7 };
  thermometer(kit, sheet, at, { heading: "walk-in °C", count: 5, range: range(1, 4) });
  thermometer(
    kit,
    sheet,
    { ...at, column: 8 },
    {
      ...{ heading: "ice drawer °C", count: 5, range: range(-14, -11) },
    },
  );
  rowsAt(sheet, { row: 12, column: 6 }, [
    ["on pastry", "Tue Wed Sat"],
    ["on pass", "Thu Fri"],
  ]);
  note(kit, sheet, 15, 6, "label every tin with the day, no marker on lids");
}

/** A restaurant's cook for sweets. */
export const sweetSections: readonly Layout[] = [
  { name: "sweet section, weighing list with the sum on top", language: "en", build: sweetSection },
];
