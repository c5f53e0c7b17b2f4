import { addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { nameTarget, type Kit, type Layout } from "../kit";
import { markRecipe, sumOf } from "../layouts/parts";
import { perHundred, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { columnOf, stillMet } from "../kitchens/hand";
import { toldOf } from "./etikett";

const SAID: readonly (ResultPlan & { readonly label: string })[] = [
  { label: "Gefrierpunkt in °C", states: "freezing point", as: "typed", decimals: 2 },
  { label: "Gefrierpunktserniedrigung in K", states: "depression", as: "typed" },
  { label: "Gesamtwasser in g je 100 g", states: "water", as: "typed", decimals: 1 },
  {
    label: "Zucker in g je 100 g Wasser",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  {
    label: "gefrorenes Wasser bei −12 °C in %",
    states: "ice of water",
    as: "typed",
    temperatureC: -12,
  },
];

interface Table {
  readonly names: readonly Spot[];
  readonly corner: Spot;
  readonly labels: readonly Spot[];
}

/** One group's recipe down its column, what it comes to below. */
function group(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, table: Table): void {
  const { names, corner, labels } = table;
  put(sheet, 1, column, made.title);
  const words = names.map(({ row }) => sheet.cells[row]![0]!.content);
  const at = made.names.map((name) => words.indexOf(name));
  const amounts = at.map((index, line) => put(sheet, 3 + index, column, made.grams[line]));
  const all = names.map(({ row }) => ({ sheet: sheet.name, row, column }));
  const total = sumOf(kit, sheet, { row: labels[0]!.row, column }, all);
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((index) => names[index]!), amounts, unit: "%", amountLabel: corner, total },
    shared: true,
  });
  SAID.forEach((plan, index) => {
    const label = labels[1 + index]!;
    resultAt(sheet, recipe, label, { row: label.row, column }, plan);
  });
  nameTarget(sheet, recipe, { row: labels.at(-2)!.row, column });
  const told = toldOf(made);
  if (made.flagged && told !== "") recipe.flags.push(put(sheet, labels.at(-1)!.row, column, told));
}

/** Recipes of the class in per cent by mass, a column each, as they were handed in. */
function handedIn(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rezepturvergleich");
  putRow(sheet, 0, 0, ["Gruppe", "A", "B", "C", "D"]);
  put(sheet, 1, 0, "Rezeptur");
  const corner = put(sheet, 2, 0, "Zutat, Angaben in Massen-%");
  const mades = kit.make(4).map((made) => stillMet(perHundred(made)));
  const items = [...new Set(mades.flatMap((made) => made.names))];
  const names = columnOf(
    items.map((item, index) => putRow(sheet, 3 + index, 0, [item])),
    0,
  );
  const below = ["Summe", ...SAID.map(({ label }) => label), "Vorgabe", "Allergene und Hinweise"];
  const labels = below.map((label, index) => put(sheet, 3 + items.length + index, 0, label));
  mades.forEach((made, index) => group(kit, sheet, made, 1 + index, { names, corner, labels }));
}

/** What a class hands in. */
export const vergleich: readonly Layout[] = [
  {
    name: "Berufsschule, Rezepturvergleich als Datei",
    language: "de",
    isCsv: true,
    build: handedIn,
  },
];
