import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed, type Listed } from "../newcomers/words";
import { input } from "../page";
import { labelAt, ofAlcohol, temperatures } from "./words";

/** What a raw material is there for. */
function purpose(name: string): string {
  if (/sug|sucr|dextr|fruct|honey|syrup/.test(name)) return "sweetness";
  if (/milk|cream|yog|yolk|inulin/.test(name)) return "body";
  return name === "water" ? "bulk" : "flavour";
}

/** The grams or kilograms of each batch, by its size. */
const batches = (kit: Kit, { sheet, heads, amounts, end }: Listed, sizes: readonly Spot[]) =>
  sizes.map((size, index) => {
    const format = ["0", "0.00"][index]!;
    const spots = beside(kit, heads[4 + index]!, amounts, {
      ...{ sheet, format, fixed: [size] },
      content: (spot) => `=${a1(spot)}/100*${fixed(size)}`,
    });
    sumOf(kit, sheet, { row: end, column: 4 + index }, spots, format);
    return spots;
  });

/** The formula in per cent by weight, the bench batch and the plant batch worked out from it. */
function formula(kit: Kit, sheet: CorpusSheet, sizes: readonly Spot[]): MarkedRecipe {
  const made = largestFirst(kit.make(1)[0]!);
  const list = listed(
    sheet,
    made,
    { row: 7, column: 0 },
    {
      heads: ["No.", "Raw material", "Why it is in", "% w/w", "Bench (g)", "Plant (kg)"],
      cells: (name, grams, index) => [...[index + 1, name, purpose(name)], shown(grams, "0.0")],
      ...{ name: 1, amount: 3 },
    },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 1, "Sum");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts, "0.0");
  const also = batches(kit, list, sizes);
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: also.flat(), unit: "%", amountLabel: heads[3]!, total },
  });
}

/** What is expected of it, per 100 g. */
function expected(sheet: CorpusSheet, recipe: MarkedRecipe, row: number, draw: Spot): number {
  put(sheet, row, 1, "Expected of 100 g");
  const temperatureC = sheet.cells[draw.row]![draw.column]!.content as number;
  return say(sheet, recipe, { row: row + 1, column: 1 }, [
    { label: "Initial freezing point, °C", states: "freezing point", as: "formula" },
    { label: "Water, g", states: "water", as: "formula", format: "0.0" },
    { label: "In solution, g", states: "dissolved", as: "typed", decimals: 1 },
    { label: "Sugars, g to 100 g water", states: "sugar per 100 g water", as: "formula" },
    {
      label: "Ice at draw temperature, % of the water",
      ...{ states: "ice of water", as: "formula", temperature: draw, temperatureC },
    },
    {
      label: "Ice at −18 °C, % of the product",
      ...{ states: "ice of mix", as: "typed", temperatureC: -18 },
    },
    ...ofAlcohol(recipe.made, "Ethanol, g"),
  ]);
}

const LOG = ["Trial", "Mix in (°C)", "Drawn at (°C)", "Next morning (°C)", "Seen"];
const SEEN = ["smooth", "coarse near the wall", "fine, a little soft", "crumbles when cut"];

/** The trials that were run with it, beside the formula. */
function log(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  const heads = putRow(sheet, 7, 8, LOG);
  const half = (from: number, to: number) => shown(-random.whole(from, to) / 2, "0.0");
  const rows = [1, 2, 3, 4, 5].map((trial, index) =>
    putRow(sheet, 8 + index, 8, [
      ...[`T${trial}`, shown(random.whole(6, 12) / 2, "0.0"), half(9, 13), half(32, 41)],
      random.pick(SEEN),
    ]),
  );
  temperatures(kit, heads[2]!, columnOf(rows, 2));
  temperatures(kit, heads[3]!, columnOf(rows, 3));
}

/** A development sheet with the log of its trials. */
function benchSheet(kit: Kit): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, "Development");
  put(sheet, 0, 0, "Frozen dessert, development sheet");
  const at = (row: number) => ({ row, column: 1 });
  const batch = (label: string, value: number, row: number) =>
    input(kit, sheet, at(row), { label, bare: label.replace(/ \(.*/, ""), value });
  const bench = batch("Bench batch (g)", random.pick([800, 1200, 1500]), 2);
  const plant = batch("Plant batch (kg)", random.pick([60, 120, 250]), 3);
  const draw = batch("Draw temperature (°C)", -random.whole(5, 7), 4);
  const recipe = formula(kit, sheet, [bench, plant]);
  log(kit, sheet);
  const row = Math.max(recipe.total!.row, 13) + 2;
  let next = expected(sheet, recipe, row, draw);
  nameTarget(sheet, recipe, { row: next++, column: 1, label: "Product type" });
  next = labelAt(sheet, recipe, { row: next, column: 1 }, "Allergens:");
  note(kit, sheet, next + 1, 1, "Supplier specifications are in the blue folder.");
}

/** A food technologist. */
export const benchSheets: readonly Layout[] = [
  { name: "development sheet in % w/w, trials beside it", language: "en", build: benchSheet },
];
