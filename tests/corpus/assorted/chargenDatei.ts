import { addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { upTo } from "../strollers/words";
import { asTemperatures } from "./words";

const VOICE: Voice = {
  lead: "Allergene:",
  honey: "Enthält Honig, nicht für Säuglinge unter 12 Monaten.",
  alcohol: "Enthält Alkohol, nicht für Kinder, Schwangere und Fahrer.",
  nuts: "Ganze Nüsse, Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb, auf 71 °C erhitzen oder pasteurisiertes verwenden.",
};

const OWN = {
  "Sahne 35 %": "Sahne 35 % Fett",
  Zucker: "Rübenzucker",
  Magermilchpulver: "Magermilchpulver (MMP)",
  Wasser: "Trinkwasser",
};

const VALUES: readonly (readonly [label: string, plan: ResultPlan])[] = [
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "typed" }],
  ["Erniedrigung (K)", { states: "depression", as: "typed" }],
  ["Wasser im Ansatz (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Gelöstes im Ansatz (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Wasser gefroren bei −20 °C (%)", { states: "ice of water", as: "typed", temperatureC: -20 }],
  ["Eis in der Masse bei −20 °C (%)", { states: "ice of mix", as: "typed", temperatureC: -20 }],
];

const lotOf = ({ random }: Kit): string => `L${random.whole(20, 29)}-${random.whole(100, 999)}`;

/** The lines of a batch, its number before each; gives the recipe and the next free row. */
function batch(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  top: number,
  heads: readonly Spot[],
) {
  const number = `26-${String(top).padStart(3, "0")}`;
  const rows = made.names.map((item, index) =>
    putRow(sheet, top + index, 0, [
      ...[number, made.title, index + 1, lotOf(kit), item, inUnit(made.grams[index]!, "kg"), "kg"],
    ]),
  );
  const [names, amounts, unitCells] = [4, 5, 6].map((at) => columnOf(rows, at));
  const row = top + rows.length;
  putRow(sheet, row, 0, [number, made.title, undefined, undefined, "Ansatz gesamt"]);
  const total = put(sheet, row, 5, `=ROUND(SUM(${span(amounts!)}),3)`);
  put(sheet, row, 6, "kg");
  const recipe = markRecipe(kit, made, {
    ...{ names: names!, amounts: amounts!, unitCells: unitCells!, unit: "kg", total },
    amountLabel: heads[5]!,
  });
  return { recipe, number, next: row + 1 };
}

interface Batch {
  readonly recipe: MarkedRecipe;
  readonly number: string;
}

/** What the laboratory says of each batch, a line each. */
function laboratory(kit: Kit, sheet: CorpusSheet, batches: readonly Batch[], top: number): number {
  const labels = VALUES.map(([label]) => label);
  const last = ["Verwendung", "Auslauf Freezer (°C)", "Deklaration"];
  const heads = putRow(sheet, top, 0, ["Charge", ...labels, ...last]);
  const outlets = batches.map(({ recipe, number }, index) => {
    const row = top + 1 + index;
    put(sheet, row, 0, number);
    VALUES.forEach(([, plan], at) => {
      resultAt(sheet, recipe, heads[1 + at]!, { row, column: 1 + at }, plan);
    });
    const { target } = recipe.made;
    if (target !== null) recipe.targets.push(put(sheet, row, 7, target));
    tellIn(sheet, recipe, { row, column: 9 }, VOICE);
    return put(sheet, row, 8, -kit.random.whole(52, 68) / 10);
  });
  asTemperatures(kit, heads[8]!, outlets);
  return top + 2 + batches.length;
}

/** All batches of a week in one list, the laboratory below. */
function datei(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Chargen");
  const heads = putRow(sheet, 0, 0, [
    ...["Charge", "Artikel", "Pos.", "Los", "Rohstoff", "Einwaage", "ME"],
  ]);
  let row = 1;
  const batches = kit.make(4).map((made) => {
    const { next, ...rest } = batch(kit, sheet, called(upTo(made, 20000), OWN), row, heads);
    row = next;
    return rest;
  });
  const end = laboratory(kit, sheet, batches, row + 1);
  note(kit, sheet, end, 0, "Export aus der Waagensteuerung, Freigabe durch QS steht noch aus");
}

/** A dairy cooperative. */
export const molkereien: readonly Layout[] = [
  {
    ...{ name: "Molkereigenossenschaft, Chargen und Labor als Datei", language: "de" },
    ...{ isCsv: true, build: datei },
  },
];
