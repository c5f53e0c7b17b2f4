import { a1, addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { costsBeside, day, fact, pricesOf, readings } from "../counters/words";

const VOICE: Voice = {
  lead: "Schildchen:",
  honey: "Honig! Unter 12 Monaten nicht.",
  alcohol: "Mit Schuss: kein Alkohol für Kinder, Schwangere, Autofahrer.",
  nuts: "Ganze Nüsse! Unter 5 Jahren Erstickungsgefahr.",
  egg: "Eigelb roh: erst auf 71 °C, sonst pasteurisiert.",
};

const WORDS = {
  ...{ Zucker: "Zucker, fein", "Sahne 35 %": "Rahm 35 %", Zitronensaft: "Zitronensaft gesiebt" },
  ...{ Orangensaft: "Orangensaft, frisch gepresst", Kokosraspel: "Kokosflocken" },
};

const SAID: readonly Said[] = [
  { label: "Gefriert ab °C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "das sind K unter Wasser", states: "depression", as: "typed", decimals: 1 },
  { label: "Wasser g", states: "water", as: "typed", decimals: 0 },
  { label: "gelöst g", states: "dissolved", as: "formula", format: "0" },
  {
    label: "% Eis in der Masse bei −14 °C",
    ...{ states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  },
];

/** One recipe, its answers under it; several stand beside each other. Gives what it costs. */
function block(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, low: number): Spot {
  put(sheet, 2, column, made.title);
  const prices = pricesOf(kit, made);
  const list = listed(
    sheet,
    made,
    { row: 3, column },
    {
      heads: ["Menge", "Einh.", "Zutat", "€/kg", "€"],
      cells: (name, grams, index) => [grams, "g", name, prices[index]],
      ...{ name: 2, amount: 0 },
    },
  );
  const { names, amounts, heads } = list;
  const costs = costsBeside(kit, sheet, heads[4]!, amounts, { column: column + 3 });
  const total = sumOf(kit, sheet, { row: low, column }, amounts);
  putRow(sheet, low, column + 1, ["g", "Summe"]);
  const cost = sumOf(kit, sheet, { row: low, column: column + 4 }, costs, "0.00");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unitCells: columnOf(list.rows, 1), total, unit: "g" },
    amountLabel: heads[0]!,
  });
  const said = [...SAID, ...ofAlcohol(made, "Alkohol g")];
  say(sheet, recipe, { row: low + 2, column: column + 2 }, said);
  nameTarget(sheet, recipe, { row: low + 8, column: column + 2, label: "wie?" });
  tellIn(sheet, recipe, { row: low + 9, column }, VOICE);
  return cost;
}

/** The day's duties, which are on the same page. */
function duties(sheet: CorpusSheet, row: number): void {
  [
    ["Dienst", "früh", "spät"],
    ["Eis", "Rosi", "Timo"],
    ["Torten", "Anke", "Anke"],
    ["Spüle", "Timo", "Rosi"],
  ].forEach((cells, index) => putRow(sheet, row + index, 6, cells));
}

/** Two recipes side by side, the freezers' log and the duties under them. */
function konditorin(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis Sommer");
  put(sheet, 0, 0, "Eis für die Torten, Sommerkarte");
  const mades = kit.make(2).map((made) => called(made, WORDS));
  const low = 4 + Math.max(...mades.map(({ names }) => names.length));
  const costs = mades.map((made, index) => block(kit, sheet, made, 6 * index, low));
  const row = low + 12;
  const both = `=${costs.map(a1).join("+")}`;
  const spot = fact(sheet, { row, column: 0 }, "beide zusammen €", both, "0.00");
  kit.marked.sums.push({ spot, parts: costs });
  const heads: [string, ...string[]] = ["Datum", "Schockfroster °C", "Truhe °C"];
  const when = [184, 185, 188, 189, 191].map((ofYear) => day(ofYear, "dd.mm."));
  const ranges = [[-37, -32] as const, [-20, -17] as const];
  const end = readings(kit, sheet, { row: row + 2, column: 0 }, { heads, when, ranges });
  duties(sheet, row + 2);
  note(kit, sheet, end + 1, 0, "Böden am Vortag backen, Eis erst morgens einstreichen.");
}

/** A confectioner. */
export const konditorinnen: readonly Layout[] = [
  {
    name: "Konditorin, zwei Rezepte nebeneinander mit Truhenbuch",
    language: "de",
    build: konditorin,
  },
];
