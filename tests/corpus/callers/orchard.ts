import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { columnOf } from "../kitchens/hand";
import type { MadeRecipe } from "../recipes";
import { desk, linesOn, tellBehind } from "./desk";

const KNOWN: readonly Said[] = [
  {
    ...{ label: "Begins to freeze", inCell: "°C" },
    ...{ states: "freezing point", as: "typed", decimals: 1 },
  },
  { label: "Freezing point depression", inCell: "K", states: "depression", as: "formula" },
  { label: "All the water", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "All that is dissolved", inCell: "g", states: "dissolved", as: "formula", format: "0" },
  {
    ...{ label: "Frozen at −18 °C, of its water", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

const OURS = /peach|strawberries|blueberries|raspberries|cherries|apple|honey|walnuts|hazelnuts/;

/** Where a line came from. */
function fromWhom({ lines }: MadeRecipe, index: number): string {
  const { en } = lines[index]!;
  if (en === "water") return "well";
  if (OURS.test(en)) return "our own";
  return /milk|cream|yogurt|yolk/.test(en) ? "next farm" : "shop";
}

/** The ice of the month with a unit beside each amount. */
function ice(kit: Kit, sheet: CorpusSheet): void {
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, made.title);
  const list = desk(kit, sheet, made, {
    ...{ row: 2, column: 0 },
    heads: ["Put in", "How much", undefined, "Got from"],
    cells: (index) => [made.names[index], made.grams[index], "g", fromWhom(made, index)],
    ...{ name: 0, amount: 1, sum: "Makes" },
  });
  put(sheet, list.end, 2, "g");
  const unitCells = columnOf(list.rows, 2);
  const recipe = markRecipe(kit, made, { ...linesOn(list), unitCells, unit: "g" });
  const next = say(sheet, recipe, { row: list.end + 2, column: 0 }, KNOWN);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Meant to be" });
  tellBehind(sheet, recipe, { row: next + 2, column: 0 }, "On the lid: contains");
}

/** How the ice is under the spoon when the freezer is so cold. */
const spoonAt = (celsius: number): string =>
  celsius < -19 ? "bends it" : celsius < -17.5 ? "needs ten minutes" : "just right";

const DAYS = ["1 Oct", "3 Oct", "6 Oct", "8 Oct", "13 Oct", "20 Oct", "27 Oct"];

/** What the barn freezer and the spoon said, right of the recipe. */
function log({ marked, random }: Kit, sheet: CorpusSheet): void {
  put(sheet, 1, 5, "Barn freezer");
  const heads = putRow(sheet, 2, 5, ["Looked on", "Spoon", "Thermometer (°C)", "Door shut?"]);
  const spots = DAYS.map((day, index) => {
    const celsius = -random.whole(31, 43) / 2;
    const line = [day, spoonAt(celsius), shown(celsius, "0.0"), "yes"];
    return putRow(sheet, 3 + index, 5, line)[2]!;
  });
  marked.numberColumns.push({ spots, heading: heads[2]!, total: null, kind: "temperature" });
}

const BOTTLED = ["bottled quince", "windfall apple butter", "damson pulp"];

/** What is in the orchard's own jars; gives the range with its headings. */
function bottled({ marked, random }: Kit, sheet: CorpusSheet): string {
  put(sheet, 0, 0, "From our jars, in 100 g of each, by the lab's slip");
  const heads = putRow(sheet, 2, 0, [
    ...["name", "water", "sugars", "protein", "fat", "inert", "allergens"],
  ]);
  const rows = BOTTLED.map((jar, index) => {
    const [sugars, protein, inert] = [random.whole(14, 46), random.whole(0, 1), random.whole(1, 4)];
    const water = 100 - sugars - protein - inert;
    const line = [jar, water, sugars, protein, 0, inert, "none"];
    const cells = putRow(sheet, 3 + index, 0, line);
    const [name, waterCell, sugarCell] = cells as [Spot, Spot, Spot];
    marked.ownLines.push({ name, water: waterCell, sugars: sugarCell, allergens: cells[6]! });
    return cells;
  });
  return absolute(span([heads[0]!, ...rows.flat()]));
}

/** A trial with the orchard's own jars. */
function trial(kit: Kit, own: string): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Quince trial");
  put(sheet, 0, 0, "Quince and apple, first try");
  putRow(sheet, 1, 0, ["Weighed (g)", "Of"]);
  const lines = [
    ...[[10 * random.whole(25, 40), BOTTLED[0]!] as const, [60, BOTTLED[1]!] as const],
    ...[[10 * random.whole(10, 20), "water"] as const, [40, "sugar"] as const],
  ];
  const rows = lines.map((each, index) => putRow(sheet, 2 + index, 0, each));
  const row = 2 + rows.length;
  put(sheet, row, 1, "in the bowl");
  sumOf(kit, sheet, { row, column: 0 }, columnOf(rows, 0));
  const both = `${span(columnOf(rows, 1))},${span(columnOf(rows, 0))}`;
  const call = shown(`=RIME.FREEZINGPOINT(${both},Jars!${own})`, "0.0");
  putRow(sheet, row + 2, 0, [call, "°C, where it begins to freeze"]);
  note(kit, sheet, row + 3, 0, "Too sharp for the children, next time more apple.");
}

/** An ice with the freezer's log beside it, own jars, and a trial of them. */
function orchard(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "October");
  ice(kit, sheet);
  log(kit, sheet);
  const own = bottled(kit, addSheet(kit.marked.book, "Jars"));
  trial(kit, own);
}

/** Sheets of an orchard that makes ices. */
export const orchards: readonly Layout[] = [
  { name: "orchard, an ice with its log and our own jars", language: "en", build: orchard },
];
