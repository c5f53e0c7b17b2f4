import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { degrees, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Allergy advice: contains",
  honey: "Contains honey, unsuitable for infants under 12 months.",
  alcohol: "Contains alcohol, not for children, during pregnancy or before driving.",
  nuts: "Contains whole nuts, a choking hazard for children under 5 years.",
  egg: "Contains raw egg yolk: mix heated to 71 °C, or pasteurised yolk used.",
};

const FILE_COPY: readonly Said[] = [
  { label: "Freezing point", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water per 100 g", inCell: "g", states: "water", as: "typed", decimals: 1 },
  {
    label: "Sugars, share of the mix",
    inCell: "%",
    states: "sugar share",
    as: "typed",
    decimals: 1,
  },
  {
    ...{ label: "Ice in the tub at −18 °C", inCell: "% of the mix" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** A label as it goes to the printer, then what stays in the office. */
function label(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number): MarkedRecipe {
  put(sheet, 2, column, made.title.toUpperCase());
  putRow(sheet, 3, column, ["Net weight", shown(120, '0 "g"')]);
  const { heads, names, amounts } = listed(
    sheet,
    made,
    { row: 4, column },
    {
      heads: ["Ingredients", "Share"],
      cells: (name, percent) => [name, shown(inUnit(percent, "fraction"), "0.0%")],
    },
  );
  put(sheet, 11, column, "Checks to");
  const total = sumOf(kit, sheet, { row: 11, column: column + 1 }, amounts, "0.0%");
  kit.marked.numberColumns.push({ spots: amounts, heading: heads[1]!, total, kind: "fraction" });
  const cells = { names, amounts, unit: "fraction", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  tellIn(sheet, recipe, { row: 12, column }, VOICE);
  put(sheet, 13, column, "Keep frozen. Once thawed do not refreeze.");
  put(sheet, 15, column, "Office only");
  const next = say(sheet, recipe, { row: 16, column }, FILE_COPY);
  nameTarget(sheet, recipe, { row: next, column, label: "Made to be" });
  return recipe;
}

/** What is in the shop's freezers, and how cold they were. */
function freezers(kit: Kit, mades: readonly MadeRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Freezers");
  const { random, marked } = kit;
  const { heads, rows } = table(
    sheet,
    { row: 1, column: 0 },
    ["Tub", "Counted", "Shelf price (£)", "Worth (£)", "Made on", "Best before"],
    mades.map(({ title }) => [
      ...[title, random.whole(8, 140), shown(random.pick([2.4, 2.6, 2.95]), "0.00"), undefined],
      ...[`${random.whole(1, 28)} May`, `${random.whole(1, 28)} November`],
    ]),
  );
  const worth = rows.map(([, count, price]) =>
    put(sheet, count!.row, 3, shown(`=${a1(count!)}*${a1(price!)}`, "0.00")),
  );
  marked.formulaColumns.push({ spots: worth, heading: heads[3]!, fixed: [] });
  const end = 2 + rows.length;
  put(sheet, end, 0, "In stock");
  const sum = (spots: readonly Spot[], format?: string) =>
    sumOf(kit, sheet, { row: end, column: spots[0]!.column }, spots, format);
  sum(columnOf(rows, 1));
  sum(worth, "0.00");
  const log = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat"].map((day) => [
    ...[day, degrees(kit, -22, -18), degrees(kit, -21, -17), random.pick(["PB", "TR", "AL"])],
  ]);
  const plan = { heads: ["Day", "Upright (°C)", "Chest (°C)", "Read by"], rows: log };
  readings(kit, sheet, { row: end + 3, column: 0 }, { ...plan, temperatures: [1, 2] });
  note(kit, sheet, end + 11, 0, "Upright ices up by the hinge, defrost in the first week.");
}

/** A farm shop: the labels of its tubs beside each other. */
function farmShop(kit: Kit): void {
  const words = { sugar: "white sugar", mango: "mango pulp" };
  const mades = kit.make(4).map((made) => called(largestFirst(made), words));
  const sheet = addSheet(kit.marked.book, "Labels");
  put(sheet, 0, 0, "Tub labels, ready for the printer");
  mades.forEach((made, index) => label(kit, sheet, made, 4 * index));
  freezers(kit, mades);
}

/** Sheets of a farm shop. */
export const tubLabels: readonly Layout[] = [
  { name: "farm shop, four tub labels and the freezers", language: "en", build: farmShop },
];
