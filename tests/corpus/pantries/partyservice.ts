import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { kilos } from "../layouts/marking";
import { sumOf } from "../layouts/parts";
import { down } from "../lodgers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { table } from "./words";

const VOICE: Voice = {
  lead: "Buffetschild: enthält",
  honey: "Honig enthalten, für Kinder unter 12 Monaten ungeeignet.",
  alcohol:
    "Alkohol enthalten, nicht für Kinder, nicht in der Schwangerschaft, nicht vor der Heimfahrt am Steuer.",
  nuts: "Ganze Nüsse, für Kinder unter 5 Jahren Erstickungsgefahr.",
  egg: "Rohes Eigelb, Masse auf 71 °C erhitzen oder pasteurisiertes Eigelb.",
};

const WERTE: readonly Fact[] = [
  ["friert ab, °C", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Wasser im Ansatz, g", { states: "water", as: "formula", format: "0" }],
  [
    "Eis bei −15 °C, % vom Wasser",
    { states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  ],
  ["Zucker auf 100 g Wasser, g", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
];

const TOP = 7;

const LIEFERANTEN: readonly (readonly [RegExp, string])[] = [
  [/milch|Sahne|joghurt/i, "Molkerei"],
  [/wasser/i, "Wasserhahn"],
  [/beeren|kirschen|Pfirsich|Apfel|Honig|Eigelb/, "Bauer"],
];

/** Where a line's item comes from. */
const lieferant = (sheet: CorpusSheet, row: number): string => {
  const { content } = sheet.cells[row]![0]!;
  const name = typeof content === "string" ? content : "";
  return LIEFERANTEN.find(([of]) => of.test(name))?.[1] ?? "Großmarkt";
};

/** What the batches take in all, what is there and what has to be ordered. */
function bedarf(kit: Kit, sheet: CorpusSheet, items: readonly Spot[], batches: readonly Spot[]) {
  const { random, marked } = kit;
  const heads = putRow(sheet, TOP - 1, 5, ["Bedarf (kg)", "Lager (kg)", "Bestellen (kg)", "bei"]);
  const counts = span(batches).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
  const needs = items.map((item) => {
    const line = span([1, 2, 3].map((column) => ({ ...item, column })));
    return put(sheet, item.row, 5, shown(`=SUMPRODUCT(${line},${counts})/1000`, "0.000"));
  });
  const orders = needs.map((need) => {
    const from = lieferant(sheet, need.row);
    const stored = from === "Wasserhahn" ? 0 : random.whole(0, 24) / 4;
    const store = put(sheet, need.row, 6, shown(stored, "0.00"));
    put(sheet, need.row, 8, from);
    return put(sheet, need.row, 7, shown(`=MAX(0,${a1(need)}-${a1(store)})`, "0.000"));
  });
  marked.formulaColumns.push({ spots: needs, heading: heads[0]!, fixed: [...batches] });
  marked.formulaColumns.push({ spots: orders, heading: heads[2]!, fixed: [] });
  sumOf(kit, sheet, { row: TOP + items.length, column: 5 }, needs, "0.000");
}

/** The evenings that are booked; gives the cell with all guests. */
function abende(kit: Kit): Spot {
  const sheet = addSheet(kit.marked.book, "Aufträge");
  const { random } = kit;
  put(sheet, 0, 0, "Gebuchte Abende im Juli");
  const { rows } = table(
    sheet,
    { row: 2, column: 0 },
    ["Datum", "Anlass", "Ort", "Gäste", "Aufbau", "Fahrer"],
    [
      ["4.7.", "Hochzeit", "Scheune", 20 * random.whole(3, 7), "14:00", "Toni"],
      ["11.7.", "Sommerfest", "Werkhof", 20 * random.whole(4, 9), "16:00", "Jule"],
      ["18.7.", "Taufe", "Pfarrgarten", 20 * random.whole(1, 3), "10:30", "Toni"],
      ["25.7.", "Jubiläum", "Bootshaus", 20 * random.whole(2, 6), "17:00", "beide"],
    ],
  );
  put(sheet, 7, 2, "Gäste im Monat");
  note(kit, sheet, 9, 0, "Thermokisten gehören uns, Trockeneis bestellt der Fahrer.");
  return sumOf(
    kit,
    sheet,
    { row: 7, column: 3 },
    rows.map((cells) => cells[3]!),
  );
}

/** One sort of ice in its column. */
function sorte(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  { index, items, amountLabel }: { index: number; items: readonly Spot[]; amountLabel: Spot },
): void {
  const column = 1 + index;
  put(sheet, TOP - 1, column, made.title);
  const plan = { items, left: 1, unit: "g", format: "0", amountLabel } as const;
  const recipe = downColumn(kit, sheet, made, index, plan);
  const row = TOP + items.length + 2;
  factsDown(sheet, recipe, WERTE, { row, column, labels: 0, items });
  nameTarget(sheet, recipe, { row: row + 4, column });
  tellIn(sheet, recipe, { row: row + 5, column }, VOICE);
}

/** A caterer's order sheet for three ices. */
function partyservice(kit: Kit): void {
  const guests = abende(kit);
  const sheet = addSheet(kit.marked.book, "Bestellung");
  put(sheet, 0, 0, "Eis für die Abende, Ansätze und Bestellung");
  const words = { Zucker: "Kristallzucker", Pistazien: "Pistazienkerne", Wasser: "Leitungswasser" };
  const mades = kit.make(3).map((made) => called(kilos(made, 4), words));
  putRow(sheet, 2, 0, ["Gäste", `=Aufträge!${a1(guests)}`]);
  putRow(sheet, 3, 0, ["Ansätze zu 4 kg"]);
  const batches = mades.map((_, index) => put(sheet, 3, 1 + index, kit.random.whole(2, 6)));
  const amountLabel = put(sheet, TOP - 1, 0, "ein Ansatz in g");
  const items = down(sheet, [TOP, 0], itemsOf(mades));
  const totals = batches.map((spot) => ({ ...spot, row: TOP + items.length }));
  const reach = `=SUMPRODUCT(${span(batches)},${span(totals)})/B3`;
  putRow(sheet, 4, 0, ["reicht je Gast, g", shown(reach, "0")]);
  put(sheet, TOP + items.length, 0, "Summe");
  putRow(sheet, TOP + items.length + 6, 0, ["Konsistenz"]);
  putRow(sheet, TOP + items.length + 7, 0, ["Schild"]);
  mades.forEach((made, index) => sorte(kit, sheet, made, { index, items, amountLabel }));
  bedarf(kit, sheet, items, batches);
}

/** Sheets of a caterer. */
export const partyservices: readonly Layout[] = [
  {
    name: "Partyservice, Abende und Bestellung für drei Eise",
    language: "de",
    build: partyservice,
  },
];
