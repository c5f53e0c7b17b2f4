import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import {
  allergensOf,
  cautionsIn,
  downColumn,
  factsDown,
  type Fact,
  type Voice,
} from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { itemsOf, upTo } from "../strollers/words";

const VOICE: Voice = {
  lead: "",
  honey: "Honig: nicht unter 12 Monaten",
  alcohol: "Alkohol: nicht für Kinder, Schwangere, Fahrer",
  nuts: "ganze Nüsse: Erstickungsgefahr unter 5 Jahren",
  egg: "rohes Eigelb: 71 °C oder pasteurisiert",
};

const WORDS = {
  ...{ Zucker: "Haushaltszucker", Limettensaft: "Limettensaft, frisch" },
  ...{ Süßkirschen: "Süßkirschen, entsteint", Filterkaffee: "Kaffee, gebrüht" },
};

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt [°C]", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Gefrierpunkt gesenkt um [K]", { states: "depression", as: "typed", decimals: 1 }],
  ["Wasser [g]", { states: "water", as: "formula", format: "0" }],
  ["gelöst [g]", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "Wasser ausgefroren bei −15 °C [%]",
    { states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  ],
];

/** What all flavours need together, at the right of them. */
function needed(kit: Kit, sheet: CorpusSheet, items: readonly Spot[], count: number): void {
  const heading = put(sheet, 3, 2 + count, "alle zus. [g]");
  const spots = items.map(({ row }) => {
    const from = { sheet: sheet.name, row, column: 1 };
    const range = span([from, { ...from, column: count }]);
    return put(sheet, row, 2 + count, shown(`=SUM(${range})`, "0"));
  });
  kit.marked.formulaColumns.push({ spots, heading, fixed: [] });
  sumOf(kit, sheet, { row: items.at(-1)!.row + 1, column: 2 + count }, spots, "0");
}

/** What the buffet card has to say of a flavour, in two rows. */
function card(sheet: CorpusSheet, recipe: MarkedRecipe, row: number, column: number): void {
  const words = [allergensOf(recipe.made), cautionsIn(recipe.made, VOICE)];
  words.forEach((word, index) => {
    if (word !== "") recipe.flags.push(put(sheet, row + index, column, word));
  });
}

const ORDERS = [
  ["Sa 14.6.", "Taufe", 40, "2 Sorten"],
  ["Fr 20.6.", "Firmenfest", 120, "alle"],
  ["Sa 28.6.", "Silberhochzeit", 75, "3 Sorten"],
] as const;

/** The orders of the month on a sheet of their own. */
function orders(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 0, 0, ["Termin", "Anlass", "Gäste", "Eis"]);
  ORDERS.forEach((cells, index) => putRow(sheet, 1 + index, 0, cells));
  note(kit, sheet, 5, 0, "Anzahlung steht im Auftragsbuch, nicht hier.");
}

/** Four flavours beside each other, one column each. */
function partyservice(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis im Glas");
  const mades = kit.make(4).map((made) => called(upTo(made, 2000), WORDS));
  const amountLabel = put(sheet, 0, 0, "Eis im Glas, je Sorte ein Ansatz, alle Mengen in g");
  put(sheet, 3, 0, "Was");
  const items = itemsOf(mades).map((item, index) => put(sheet, 4 + index, 0, item));
  const end = 4 + items.length;
  put(sheet, end, 0, "Ansatz");
  putRow(sheet, end + 7, 0, ["soll werden"]);
  putRow(sheet, end + 8, 0, ["Allergene"]);
  putRow(sheet, end + 9, 0, ["Hinweis"]);
  mades.forEach((made, index) => {
    const column = 1 + index;
    put(sheet, 3, column, made.title);
    const plan = { items, left: 1, unit: "g", format: "0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    factsDown(sheet, recipe, FACTS, { row: end + 2, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 7, column });
    card(sheet, recipe, end + 8, column);
  });
  needed(kit, sheet, items, mades.length);
  orders(kit, addSheet(kit.marked.book, "Juni"));
}

/** A caterer's ices in glasses. */
export const partyservices: readonly Layout[] = [
  { name: "Partyservice, vier Sorten im Glas nebeneinander", language: "de", build: partyservice },
];
