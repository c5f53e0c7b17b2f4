import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, stillMet } from "../kitchens/hand";
import { absolute, markRecipe, sumOf } from "../layouts/parts";
import { input } from "../page";
import { withLines, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { line } from "../stock";
import { isAlcoholic, itemsOf, madeOf } from "../strollers/words";
import { heed } from "./worte";

const LAXATIVE = "Mit Xylit: kann bei übermäßigem Verzehr abführend wirken.";

/** Part of the sugar taken out for xylitol; a recipe with a mistake stays as it is. */
function lighter(made: MadeRecipe): MadeRecipe {
  const at = made.lines.findIndex(({ en }) => en === "sugar" || en === "sucrose");
  if (made.seeded !== undefined || at < 0) return made;
  const { grams } = made.lines[at]!;
  const xylitol = Math.round(grams * 0.3);
  const lines = made.lines.with(at, { ...made.lines[at]!, grams: grams - xylitol });
  return stillMet(withLines(made, [...lines, line("xylitol", "Xylit", xylitol)]));
}

/** Under the list, for each diet. */
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

const OWN_HEADS = ["Name", "Wasser", "Fett", "Zucker", "Eiweiß", "inert", "Allergene"];

/** Stewed fruits of the kitchen, for each 100 g, and one served frozen. */
function stewed(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Eigenes Kompott");
  put(sheet, 0, 0, "Kompott aus der eigenen Küche, Gramm in 100 g");
  const heads = putRow(sheet, 2, 0, OWN_HEADS);
  const rows = ["Rhabarberkompott", "Zwetschgenkompott"].map((name, index) => {
    const [sugars, inert] = [random.whole(13, 19), random.whole(1, 3)];
    const contents = [name, 100 - sugars - inert, 0, sugars, 0, inert, "keine"];
    const cells = putRow(sheet, 3 + index, 0, contents);
    const [own, water, , sweet, , , allergens] = cells as [
      Spot,
      Spot,
      Spot,
      Spot,
      Spot,
      Spot,
      Spot,
    ];
    marked.ownLines.push({ name: own, water, sugars: sweet, allergens });
    return cells;
  });
  const own = absolute(span([heads[0]!, ...rows.flat()]));
  putRow(sheet, 6, 0, ["Kompotteis, Zutat", "Menge (g)"]);
  const names = ["Rhabarberkompott", "Zwetschgenkompott", "Wasser", "Xylit"];
  const grams = [random.whole(80, 120) * 5, random.whole(60, 90) * 5, 200, 60];
  const lines = names.map((name, index) => putRow(sheet, 7 + index, 0, [name, grams[index]]));
  put(sheet, 11, 0, "Ansatz");
  sumOf(kit, sheet, { row: 11, column: 1 }, columnOf(lines, 1));
  const both = [0, 1].map((at) => span(columnOf(lines, at))).join(",");
  const point = shown(`=RIME.FREEZINGPOINT(${both},${own})`, "0.0");
  putRow(sheet, 12, 0, ["Gefrierpunkt (°C)", point]);
  put(sheet, 13, 0, LAXATIVE);
}

/** Two diets beside each other. */
function diets(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kostformen");
  const [full, light] = madeOf(kit, 2, (each) => !isAlcoholic(each)) as [MadeRecipe, MadeRecipe];
  const mades = [full, lighter(light)];
  put(sheet, 0, 0, "Eis in zwei Kostformen, gleiche Ausgabe");
  putRow(sheet, 2, 1, ["Vollkost", "leichte Kost"]);
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
  putRow(sheet, row + 4, 0, ["Schälchen aus der Vollkost", shown(count, "0")]);
  note(kit, sheet, row + 6, 0, "Süßungsmittel im Speisenplan mit Fußnote kenntlich machen.");
  stewed(kit);
}

/** Diets of the same kitchen. */
export const dietSheets: readonly Layout[] = [
  { name: "Seniorenheim, zwei Kostformen und Süßungsmittel", language: "de", build: diets },
];
