import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { stillMet } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { input } from "../page";
import { withLines, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { line } from "../stock";
import { isAlcoholic, itemsOf, madeOf } from "../strollers/words";
import { LAXATIVE, stewed } from "./kompott";
import { heed } from "./worte";

/** Part of the sugar taken out for xylitol; a recipe with a mistake stays as it is. */
function lighter(made: MadeRecipe): MadeRecipe {
  const at = made.lines.findIndex(({ en }) => en === "sugar" || en === "sucrose");
  if (made.seeded !== undefined || at < 0) return made;
  const { grams } = made.lines[at]!;
  const xylitol = Math.round(grams * 0.3);
  const lines = made.lines.with(at, { ...made.lines[at]!, grams: grams - xylitol });
  return stillMet(withLines(made, [...lines, line("xylitol", "Xylit", xylitol)]));
}

/** Under the list, for each menu. */
const BELOW: readonly (readonly [label: string, plan: ResultPlan])[] = [
  ["Gefrierpunkt °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Zucker in % der Masse", { states: "sugar share", as: "typed" }],
  ["gelöste Stoffe g", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Wasser g", { states: "water", as: "formula", format: "0" }],
  [
    "gefrorenes Wasser bei −18 °C, in % des Wassers",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

interface Table {
  readonly names: readonly Spot[];
  readonly labels: readonly Spot[];
  readonly amountLabel: Spot;
}

/** A dessert down its column; gives its sum. */
function dessert(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, table: Table) {
  const { names: items, labels, amountLabel } = table;
  const words = items.map(({ row }) => sheet.cells[row]![0]!.content);
  const names = made.names.map((name) => items[words.indexOf(name)]!);
  const amounts = names.map(({ row }, at) => put(sheet, row, column, made.grams[at]));
  const all = items.map((item) => ({ ...item, column }));
  const { row } = labels[0]!;
  const total = sumOf(kit, sheet, { row, column }, all);
  const plan = { names, amounts, unit: "g", amountLabel, total, shared: true } as const;
  const recipe = markRecipe(kit, made, plan);
  const lines = () => `${absolute(span(items))},${span(all)}`;
  BELOW.forEach(([, result], index) => {
    const label = labels[1 + index]!;
    resultAt(sheet, recipe, label, { row: label.row, column }, result, lines);
  });
  const [end, form, told] = labels.slice(-3) as [Spot, Spot, Spot];
  const sweet = made.names.includes("Xylit") ? "Zucker und Xylit" : "Zucker";
  put(sheet, end.row, column, sweet);
  nameTarget(sheet, recipe, { row: form.row, column });
  const warning = heed(made, "Enthält");
  if (warning !== "") recipe.flags.push(put(sheet, told.row, column, warning));
  if (sweet !== "Zucker") put(sheet, told.row + 1, column, LAXATIVE);
}

/** The ices of two menus beside each other. */
function diets(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Menüs");
  const [full, light] = madeOf(kit, 2, (each) => !isAlcoholic(each)) as [MadeRecipe, MadeRecipe];
  const mades = [full, lighter(light)];
  put(sheet, 0, 0, "Eis zu den zwei Menüs, gleiche Ausgabe");
  putRow(sheet, 2, 1, ["Menü 1", "Menü 2"]);
  const amountLabel = putRow(sheet, 3, 0, [
    "Zutat (Mengen in g)",
    ...mades.map((m) => m.title),
  ])[0]!;
  const items = itemsOf(mades);
  const names = items.map((item, index) => put(sheet, 4 + index, 0, item));
  const end = 4 + items.length;
  const under = ["Summe g", ...BELOW.map(([label]) => label), "gesüßt mit", "soll sein", "Aushang"];
  const labels = under.map((label, index) => put(sheet, end + index, 0, label));
  mades.forEach((made, at) => dessert(kit, sheet, made, 1 + at, { names, labels, amountLabel }));
  const { row } = labels.at(-1)!;
  const words = { label: "Schälchen (g)", bare: "Schälchen", value: kit.random.pick([60, 70, 80]) };
  const size = input(kit, sheet, { row: row + 3, column: 0 }, words);
  const count = `=${a1({ ...labels[0]!, column: 1 })}/${a1(size)}`;
  putRow(sheet, row + 4, 0, ["Schälchen aus Menü 1", shown(count, "0")]);
  note(kit, sheet, row + 6, 0, "Süßungsmittel im Speisenplan mit Fußnote kenntlich machen.");
  stewed(kit);
}

/** Menus of the same kitchen. */
export const dietSheets: readonly Layout[] = [
  { name: "Seniorenheim, zwei Menüs und Süßungsmittel", language: "de", build: diets },
];
