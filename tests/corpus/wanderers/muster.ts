import { a1, addSheet, put, putRow, shown, span, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { absolute, freezesAt, markRecipe, sumOf } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";
import { perHundred, type MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { itemsOf, temperatures } from "../strollers/words";
import { calibration } from "./kryoskop";
import { heed } from "./worte";

const TOP = 3;

/** What follows the ingredients of a sample. */
const AFTER = [
  ...["Summe", "Wasser ber. (g)", "TM ber. (%)", "TM gem. (%)", "gem. − ber."],
  ...["Gefrierpunkt ber. (°C)", "Gefrierpunkt gem. (°C)", "deklarieren"],
];

interface Sample {
  readonly recipe: MarkedRecipe;
  readonly dry: Spot;
  readonly apart: Spot;
  readonly sum: Spot;
  readonly measured: Spot;
}

/** What is worked out of a sample and what the devices said. */
function answers(kit: Kit, recipe: MarkedRecipe, sum: Spot, items: readonly Spot[]): Sample {
  const sheet = kit.marked.book.sheets[0]!;
  const { row, column } = sum;
  const own = items.map((item) => ({ ...item, row }));
  const lines = () => `${absolute(span(items))},${span(own)}`;
  const label = (at: number) => ({ ...sum, row: TOP - 1, column: column + at });
  const water = { row, column: column + 1 };
  const inWater = { states: "water", as: "formula", format: "0.0" } as const;
  resultAt(sheet, recipe, label(1), water, inWater, lines);
  const dryness = `=${a1(sum)}-${a1({ ...sum, ...water })}`;
  const dry = put(sheet, row, column + 2, shown(dryness, "0.0"));
  const real = 100 - trueValue(recipe.made, "water", null)! + kit.random.between(-0.3, 0.3);
  const oven = put(sheet, row, column + 3, shown(Number(real.toFixed(1)), "0.0"));
  const apart = put(sheet, row, column + 4, shown(`=${a1(oven)}-${a1(dry)}`, "0.0"));
  const point = { states: "freezing point", as: "formula", format: "0.00" } as const;
  resultAt(sheet, recipe, label(5), { row, column: column + 5 }, point, lines);
  const freezes = freezesAt(recipe.made.names, recipe.made.grams);
  const read = freezes + kit.random.pick([-0.04, -0.02, 0.01, 0.03]);
  const measured = put(sheet, row, column + 6, shown(Number(read.toFixed(2)), "0.00"));
  return { recipe, dry, apart, sum, measured };
}

/** A sample along its row, each ingredient under its heading. */
function sample(kit: Kit, made: MadeRecipe, row: number, items: readonly Spot[]): Sample {
  const sheet = kit.marked.book.sheets[0]!;
  putRow(sheet, row, 0, [`M${21 + row}`, made.title]);
  const words = items.map((item) => sheet.cells[item.row]![item.column]!.content);
  const names = made.names.map((name) => items[words.indexOf(name)]!);
  const amounts = names.map((name, at) => put(sheet, row, name.column, made.grams[at]));
  const all = items.map((item) => ({ ...item, row }));
  const column = items.at(-1)!.column + 1;
  const total = sumOf(kit, sheet, { row, column }, all, "0.0");
  const amountLabel = { ...total, row: 1, column: 2 };
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", shared: true, total, amountLabel },
  });
  const told = heed(made, "enthält");
  if (told !== "") recipe.flags.push(put(sheet, row, column + 7, told));
  return answers(kit, recipe, total, items);
}

/** Samples in rows, calculated beside measured. */
function samples(kit: Kit): void {
  const { book } = kit.marked;
  const sheet = addSheet(book, "Muster");
  const mades = kit.make(5).map((made) => called(perHundred(made), { Wasser: "Trinkwasser" }));
  put(sheet, 0, 0, "Betriebslabor, Eismixmuster: berechnet und gemessen");
  putRow(sheet, 1, 0, ["TM = Trockenmasse", undefined, "Einwaage in g auf 100 g Mix"]);
  const items = putRow(sheet, TOP - 1, 2, itemsOf(mades));
  putRow(sheet, TOP - 1, 0, ["Muster", "Bezeichnung"]);
  const after = putRow(sheet, TOP - 1, 2 + items.length, AFTER);
  const list = mades.map((made, index) => sample(kit, made, TOP + index, items));
  const columns = [list.map(({ sum }) => sum), list.map(({ dry }) => dry)];
  [...columns, list.map(({ apart }) => apart)].forEach((spots, at) =>
    kit.marked.formulaColumns.push({ spots, heading: after[[0, 2, 4][at]!]!, fixed: [] }),
  );
  const measured = list.map((each) => each.measured);
  temperatures(kit, after[6]!, measured);
  note(kit, sheet, TOP + list.length + 1, 0, "Trockenschrank 102 °C bis zur Massenkonstanz.");
  calibration(kit, addSheet(book, "Kryoskop"));
}

/** Sheets of a dairy's laboratory. */
export const sampleSheets: readonly Layout[] = [
  { name: "Molkereilabor, Muster mit Trockenmasse", language: "de", build: samples },
];
