import { a1, addSheet, fixed, put, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { down } from "../lodgers/words";
import { input } from "../page";
import { itemsOf } from "../strollers/words";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "./words";
import type { MadeRecipe } from "../recipes";

const VOICE: Voice = {
  lead: "Enthält",
  honey: "Honig: für Kinder unter 12 Monaten ungeeignet.",
  alcohol: "Alkohol: nicht für Kinder, nicht in der Schwangerschaft, nicht vor dem Fahren.",
  nuts: "Ganze Nüsse: Erstickungsgefahr bei Kindern unter 5 Jahren.",
  egg: "Rohes Eigelb: auf 71 °C erhitzen oder pasteurisiert kaufen.",
};

const FACTS: readonly Fact[] = [
  ["gefriert ab (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Zucker in der Masse (%)", { states: "sugar share", as: "typed", decimals: 1 }],
  ["Zucker auf 100 g Wasser (g)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  ["davon Eis bei −14 °C (% der Masse)", { states: "ice of mix", as: "typed", temperatureC: -14 }],
];

const TOP = 4;

/** How far right of its per cent a kind's weights stand. */
const AGAIN = 5;

/** The grams of one ice for the pan, right of the per cent. */
function weights(kit: Kit, sheet: CorpusSheet, cells: readonly Spot[], pan: Spot): void {
  const column = cells[0]!.column + AGAIN;
  const spots = cells.map((spot) => {
    const formula = `=${a1(spot)}*${fixed(pan)}/100`;
    return put(sheet, spot.row, column, shown(formula, "0"));
  });
  const heading = { sheet: sheet.name, row: TOP - 1, column };
  kit.marked.formulaColumns.push({ spots, heading, fixed: [pan] });
  sumOf(kit, sheet, { row: cells.at(-1)!.row + 1, column }, spots, "0");
}

interface Table {
  readonly items: readonly Spot[];
  readonly pan: Spot;
  readonly amountLabel: Spot;
}

/** One ice: its per cent, its weights, and what it does under them. */
function kind(kit: Kit, made: MadeRecipe, index: number, table: Table): void {
  const { items, pan, amountLabel } = table;
  const sheet = kit.marked.book.sheets[0]!;
  const column = 1 + index;
  const heading = put(sheet, TOP - 1, column, made.title);
  put(sheet, TOP - 1, column + AGAIN, made.title);
  const plan = { items, left: 1, again: AGAIN, unit: "%", format: "0.0", amountLabel } as const;
  const recipe = downColumn(kit, sheet, made, index, plan);
  const { amounts: spots, total } = recipe;
  weights(
    kit,
    sheet,
    items.map((spot) => ({ ...spot, column })),
    pan,
  );
  kit.marked.numberColumns.push({ spots, heading, total, kind: "per cent" });
  const row = TOP + items.length + 2;
  factsDown(sheet, recipe, FACTS, { row, column, labels: 0, items });
  nameTarget(sheet, recipe, { row: row + FACTS.length, column });
  tellIn(sheet, recipe, { row: row + FACTS.length + 1, column }, VOICE);
}

/** Per cent of four ices across, their weights for the pan beside, and what they do below. */
function hofcafe(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Eis in Prozent");
  put(sheet, 0, 0, "Unsere Eissorten in Prozent, rechts daneben zum Abwiegen");
  const words = { label: "eine Wanne (g)", bare: "eine Wanne" };
  const value = 100 * random.whole(25, 48);
  const pan = input(kit, sheet, { row: 1, column: 0 }, { ...words, value });
  const mades = kit.make(4).map((made) => called(largestFirst(made), { Zucker: "Kristallzucker" }));
  const items = down(sheet, [TOP, 0], itemsOf(mades));
  const amountLabel = put(sheet, TOP - 2, 1, "Anteil in %");
  put(sheet, TOP - 2, 1 + AGAIN, "g für eine Wanne");
  const end = TOP + items.length;
  put(sheet, end, 0, "zusammen");
  put(sheet, end + 2 + FACTS.length, 0, "soll werden");
  put(sheet, end + 3 + FACTS.length, 0, "auf die Tafel");
  mades.forEach((made, index) => kind(kit, made, index, { items, pan, amountLabel }));
  note(kit, sheet, end + 9, 0, "Früchte immer erst nach dem Passieren wiegen.");
}

/** A café on a farm. */
export const hofcafes: readonly Layout[] = [
  { name: "Hofcafé, Sorten in Prozent und Gramm je Wanne", language: "de", build: hofcafe },
];
