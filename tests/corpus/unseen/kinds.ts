import { a1, addSheet, fixed, over, put, putRow, shown, span } from "../book";
import type { CorpusSheet, Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { called } from "../kitchens/hand";
import { resultAt, type ResultPlan } from "../results";
import { namesIn, toldIn } from "./shared";

interface Plan {
  readonly title: Spot;
  /** The whole row of headings, and how many ingredients are among them, from column D. */
  readonly heads: readonly Spot[];
  readonly items: readonly string[];
  readonly scoop: Spot;
  readonly cabinet: Spot;
  readonly temperatureC: number;
}

/** What is said of one kind after its lines. */
function results(kit: Kit, recipe: MarkedRecipe, row: number, plan: Plan): void {
  const { heads, items, cabinet, temperatureC } = plan;
  const sheet = kit.marked.book.sheets[0]!;
  const end = 3 + items.length;
  const names = heads.slice(3, end);
  const lines = `${absolute(span(names))},${span(names.map((spot) => ({ ...spot, row })))}`;
  const plans: readonly ResultPlan[] = [
    { states: "freezing point", as: "formula" },
    { states: "ice of water", as: "formula", format: "0.0", temperature: cabinet, temperatureC },
    { states: "sugar per 100 g water", as: "typed", decimals: 1 },
  ];
  plans.forEach((each, step) => {
    const column = end + 2 + step;
    resultAt(sheet, recipe, heads[column]!, { row, column }, each, () => lines);
  });
  const told = toldIn(recipe.made);
  if (recipe.made.flagged && told !== "") recipe.flags.push(put(sheet, row, end + 5, told));
}

/** One kind in its row; gives the cell with its scoops. */
function kind(kit: Kit, made: MadeRecipe, row: number, plan: Plan): Spot {
  const { items, heads, title, scoop } = plan;
  const sheet = kit.marked.book.sheets[0]!;
  putRow(sheet, row, 0, [row - 5, made.title]);
  const at = made.names.map((name) => items.indexOf(name));
  const amounts = at.map((step, index) =>
    put(sheet, row, 3 + step, shown(inUnit(made.grams[index]!, "kg"), "0.000")),
  );
  const end = 3 + items.length;
  const all = heads.slice(3, end).map((spot) => ({ ...spot, row }));
  const total = sumOf(kit, sheet, { row, column: end }, all, "0.000");
  const scoops = shown(`=${a1(total)}*1000/${fixed(scoop)}`, "0");
  const names = at.map((step) => heads[3 + step]!);
  const cells = { names, amounts, total, amountLabel: title, shared: true };
  const recipe = markRecipe(kit, made, { ...cells, unit: "kg" });
  nameTarget(sheet, recipe, { row, column: 2 });
  results(kit, recipe, row, plan);
  return put(sheet, row, end + 1, scoops);
}

/** Wide headings over the ingredients and over what comes of them, then a heading for each column. */
function headings(sheet: CorpusSheet, items: readonly string[]): Spot[] {
  const end = 3 + items.length;
  const [first, second] = [put(sheet, 4, 3, "Zutaten"), put(sheet, 4, end, "Ergebnis")];
  sheet.merged.push(over([first, { ...first, column: end - 1 }]));
  sheet.merged.push(over([second, { ...second, column: end + 4 }]));
  return putRow(sheet, 5, 0, [
    ...["Nr.", "Sorte", "Verkauf als", ...items, "Ansatz", "Kugeln", "Gefrierpunkt (°C)"],
    ...["Wasser gefroren in der Vitrine (%)", "Zucker auf 100 g Wasser (g)", "Aushang"],
  ]);
}

/** The kinds of an ice cream parlour one a row, groups of columns under wide headings. */
function kinds(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Sortenbuch");
  const mades = kit.make(5).map((made) => called(made, { Zucker: "Kristallzucker" }));
  const items = namesIn(mades);
  const title = put(sheet, 0, 0, "Sortenbuch der Saison, Zutaten in kg");
  const [grams, temperatureC] = [random.pick([60, 70, 80]), random.pick([-12, -13, -14])];
  const words = { label: "Eine Kugel wiegt (g)", bare: "Eine Kugel wiegt", value: grams };
  const scoop = input(kit, sheet, { row: 1, column: 1 }, words);
  const air = { label: "Vitrine steht auf (°C)", bare: "Vitrine steht auf", value: temperatureC };
  const cabinet = input(kit, sheet, { row: 2, column: 1 }, air);
  const heads = headings(sheet, items);
  const plan = { title, heads, items, scoop, cabinet, temperatureC };
  const spots = mades.map((made, index) => kind(kit, made, 6 + index, plan));
  marked.formulaColumns.push({ spots, heading: heads[4 + items.length]!, fixed: [scoop] });
  note(kit, sheet, 12, 1, "Preise stehen auf der Tafel.");
}

/** Several recipes in rows. */
export const parlourKinds: readonly Layout[] = [
  { name: "Sortenbuch, eine Zeile je Sorte", language: "de", build: kinds },
];
