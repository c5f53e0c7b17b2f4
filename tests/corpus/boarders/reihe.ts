import { addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { stillMet } from "../kitchens/hand";
import { markRecipe } from "../layouts/parts";
import { perHundred, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { labelLine } from "./worte";

const FIRST = 4;

/** What is said of each trial, in the rows under it. */
const BELOW: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierbeginn [°C]", { states: "freezing point", as: "typed" }],
  ["Wassergehalt [g/100 g]", { states: "water", as: "typed", decimals: 1 }],
  ["gelöste Trockenmasse [g/100 g]", { states: "dissolved", as: "typed", decimals: 1 }],
  ["Zucker [% der Masse]", { states: "sugar share", as: "typed" }],
  ["Zucker [g/100 g Wasser]", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  ["Eis bei −15 °C [% des Wassers]", { states: "ice of water", as: "typed", temperatureC: -15 }],
  ["Eis bei −15 °C [% der Masse]", { states: "ice of mix", as: "typed", temperatureC: -15 }],
];

interface Side {
  readonly names: readonly Spot[];
  readonly labels: readonly Spot[];
  readonly unit: Spot;
}

/** The words down the left. */
function side(sheet: CorpusSheet, items: readonly string[], unit: Spot): Side {
  put(sheet, FIRST - 1, 0, "Rohware");
  const names = items.map((item, index) => put(sheet, FIRST + index, 0, item));
  const end = FIRST + items.length;
  const words = ["Summe", ...BELOW.map(([label]) => label), "Sollkonsistenz", "Kennzeichnung"];
  const labels = words.map((word, index) => put(sheet, end + index, 0, word));
  return { names, labels, unit };
}

/** One trial down its column; what is not in it is 0. */
function trial(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, left: Side): void {
  const { names, labels, unit } = left;
  put(sheet, FIRST - 2, column, `V${column}`);
  put(sheet, FIRST - 1, column, made.title);
  const all = names.map(({ row }) => put(sheet, row, column, 0));
  const at = made.names.map((name) =>
    names.findIndex(({ row }) => sheet.cells[row]![0]!.content === name),
  );
  const amounts = at.map((step, index) => put(sheet, all[step]!.row, column, made.grams[index]));
  const total = put(sheet, labels[0]!.row, column, `=ROUND(SUM(${span(all)}),1)`);
  const recipe = markRecipe(kit, made, {
    ...{ names: at.map((step) => names[step]!), amounts, total, unit: "%" },
    ...{ amountLabel: unit, shared: true },
  });
  BELOW.forEach(([, plan], index) => {
    const label = labels[1 + index]!;
    resultAt(sheet, recipe, label, { row: label.row, column }, plan);
  });
  const [target, told] = labels.slice(-2) as [Spot, Spot];
  nameTarget(sheet, recipe, { row: target.row, column });
  const words = labelLine(made, "enthält");
  if (words !== "") recipe.flags.push(put(sheet, told.row, column, words));
}

/** Trials beside each other in per cent by mass, as a file of values. */
function series(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Versuchsreihe");
  const mades = kit.make(4).map((made) => stillMet(perHundred(made)));
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  putRow(sheet, 0, 0, [`Versuchsreihe ${kit.random.whole(3, 28)}`, "Technikum, Speiseeis"]);
  const unit = put(sheet, 1, 0, "alle Rohwaren in Massenprozent");
  const left = side(sheet, items, unit);
  mades.forEach((made, index) => trial(kit, sheet, made, 1 + index, left));
  const end = left.labels.at(-1)!.row;
  note(kit, sheet, end + 2, 0, "Freigabe erst nach Verkostung durch drei Personen");
}

/** A food technologist's file. */
export const reihen: readonly Layout[] = [
  {
    name: "Lebensmitteltechnikerin, Versuche als Datei",
    language: "de",
    isCsv: true,
    build: series,
  },
];
