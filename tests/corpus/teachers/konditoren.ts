import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { down, given } from "../lodgers/words";
import { sumOf } from "../layouts/parts";
import { itemsOf, temperatures } from "../strollers/words";
import { sideTable, under } from "./words";

const VOICE: Voice = {
  lead: "Kennzeichnung:",
  honey: "Honig, ungeeignet unter 12 Monaten.",
  alcohol: "Alkohol, nicht an Kinder, Schwangere oder Fahrer abgeben.",
  nuts: "Nüsse ganz, Erstickungsgefahr unter 5 Jahren.",
  egg: "Eigelb roh, auf 71 °C bringen oder pasteurisiert einsetzen.",
};

const FACTS: readonly Fact[] = [
  ["Gefrierbeginn [°C]", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Erniedrigung [K]", { states: "depression", as: "formula", format: "0.0" }],
  ["Wasser [g je 100 g Mix]", { states: "water", as: "typed", decimals: 1 }],
  ["Gelöstes [g je 100 g Mix]", { states: "dissolved", as: "typed", decimals: 1 }],
  ["Zucker [g je 100 g Wasser]", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  ["Reiner Alkohol [g je 100 g Mix]", { states: "alcohol", as: "typed", decimals: 1 }],
  ["Wasser ausgefroren in der Vitrine [%]", { states: "ice of water", as: "formula", format: "0" }],
];

const LINES = 17;

/** The same lines in grams for what is made today, right of the shares. */
function ansatz(kit: Kit, sheet: CorpusSheet, items: readonly Spot[], column: number, kilos: Spot) {
  const heading = put(sheet, LINES - 1, column, "g im Ansatz");
  const spots = items.map((spot) => {
    const share = a1({ ...spot, column: column - 1 });
    return put(sheet, spot.row, column, shown(`=${share}/100*${fixed(kilos)}*1000`, "0"));
  });
  kit.marked.formulaColumns.push({ spots, heading, fixed: [kilos] });
  sumOf(kit, sheet, { row: items.at(-1)!.row + 1, column }, spots, "0");
}

/** Where it is stored, and how cold it is there. */
function lager(kit: Kit, sheet: CorpusSheet, row: number): void {
  const places = ["Schockfroster", "Kühlzelle 1", "Kühlzelle 2", "Vitrine Laden"];
  const set = [-36, -20, -20, -13];
  const lines = places.map((place, index) => [
    ...[place, set[index], set[index]! + kit.random.whole(-2, 2) / 2],
  ]);
  const heads = sideTable(sheet, [row, 0], ["Lager", "Soll [°C]", "Ist heute [°C]"], lines);
  heads.slice(1).forEach((heading) => temperatures(kit, heading, under(heading, lines.length)));
}

/** Three mixes in shares beside each other, what they do above them. */
function konditoren(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "LF 9 Eis");
  put(sheet, 0, 0, "Berufsschule, Konditoren 2. Jahr, Lernfeld 9: drei Mixe im Vergleich");
  const kilos = given(kit, sheet, [2, 0], ["Ansatz je Mix", "kg", kit.random.pick([4, 5, 6])]);
  const served = given(kit, sheet, [3, 0], ["Vitrine eingestellt", "°C", -13]);
  const words = { Zucker: "Kristallzucker", Salz: "Speisesalz", Kakaopulver: "Backkakao" };
  const mades = kit.make(3).map((made) => called(largestFirst(made), words));
  const items = down(sheet, [LINES, 0], itemsOf(mades));
  const amountLabel = put(sheet, LINES - 1, 0, "Rohstoff, Anteile in %");
  const facts = FACTS.map(([label, plan]): Fact =>
    plan.states.startsWith("ice")
      ? [label, { ...plan, temperature: served, temperatureC: -13 }]
      : [label, plan],
  );
  putRow(sheet, LINES + items.length, 0, ["Summe"]);
  putRow(sheet, 13, 0, ["Verkauf als"]);
  putRow(sheet, 14, 0, ["Schild"]);
  mades.forEach((made, index) => {
    const column = 1 + 2 * index;
    put(sheet, 5, column, made.title);
    put(sheet, LINES - 1, column, `Mix ${index + 1}`);
    const plan = { items, left: 1, step: 2, again: 1, unit: "%", format: "0.0" } as const;
    const recipe = downColumn(kit, sheet, made, index, { ...plan, amountLabel });
    factsDown(sheet, recipe, facts, { row: 6, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: 13, column });
    tellIn(sheet, recipe, { row: 14, column }, VOICE);
    ansatz(kit, sheet, items, column + 1, kilos);
  });
  lager(kit, sheet, LINES + items.length + 3);
  note(
    kit,
    sheet,
    LINES + items.length + 9,
    0,
    "Gruppenarbeit: ein Mix je Tisch, Protokoll bis Freitag.",
  );
}

/** A vocational school for confectioners. */
export const konditorenSheets: readonly Layout[] = [
  { name: "Berufsschule Konditoren, drei Mixe im Vergleich", language: "de", build: konditoren },
];
