import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Fact, type Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { kilos } from "../layouts/marking";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { itemsOf, temperatures } from "../strollers/words";

const VOICE: Voice = {
  lead: "Allergene",
  honey: "Honig, nicht unter 12 Monaten.",
  alcohol: "Alkohol, nicht für Kinder, Schwangere, Fahrer.",
  nuts: "Ganze Nüsse, Erstickungsgefahr unter 5 Jahren.",
  egg: "Rohes Eigelb, auf 71 °C bringen oder pasteurisiert.",
};

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt [°C]", { states: "freezing point", as: "typed" }],
  ["Erniedrigung [K]", { states: "depression", as: "typed" }],
  ["Wasser [g]", { states: "water", as: "typed", decimals: 0 }],
  ["Gelöstes [g]", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Zucker [g je 100 g Wasser]", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  [
    "Wasser ausgefroren bei −14 °C [%]",
    { states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  ],
  [
    "Eis in der Masse bei −14 °C [%]",
    { states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  ],
];

/** All kinds, a line each: what goes into a batch and what it is like. */
function sorten(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): void {
  const items = putRow(sheet, 3, 2, itemsOf(mades));
  const amountLabel = put(sheet, 2, 2, "Gramm je Ansatz");
  putRow(sheet, 3, 0, ["Nr.", "Sorte"]);
  const end = 2 + items.length;
  const labels = FACTS.map(([label]) => label);
  const last = ["Gesamt [g]", ...labels, "Vorgabe", "Kennzeichnung"];
  const heads = putRow(sheet, 3, end, last);
  mades.forEach((made, index) => {
    const row = 4 + index;
    putRow(sheet, row, 0, [101 + index, made.title]);
    const plan = { items, unit: "g", format: "0", amountLabel } as const;
    const recipe = alongRow(kit, sheet, made, row, plan);
    FACTS.forEach(([, answer], at) => {
      const label = heads[1 + at]!;
      resultAt(sheet, recipe, label, { row, column: label.column }, answer);
    });
    const column = end + 1 + FACTS.length;
    if (made.target !== null) recipe.targets.push(put(sheet, row, column, made.target));
    tellIn(sheet, recipe, { row, column: column + 1 }, VOICE);
  });
}

const STORES = ["Zelle 1", "Zelle 2", "Truhe Verkauf", "Lieferwagen"];

/** The cold stores, read on the day of the export. */
function lager(kit: Kit, sheet: CorpusSheet, top: number): void {
  const heads: Spot[] = putRow(sheet, top, 1, ["Lager", "gemessen [°C]", "Kisten"]);
  const rows = STORES.map((store, index) => {
    const read = shown(-kit.random.whole(172, 232) / 10, "0.0");
    return putRow(sheet, top + 1 + index, 1, [store, read, kit.random.whole(6, 48)]);
  });
  temperatures(kit, heads[1]!, columnOf(rows, 1));
}

/** All kinds of a workshop in one wide list, as it was saved for the till. */
function sortenliste(kit: Kit): void {
  const own = { Zucker: "Weißzucker", Zitronensaft: "Zitronensaft frisch", Salz: "Kochsalz" };
  const mades = kit.make(5).map((made) => called(kilos(made, 4), own));
  const sheet = addSheet(kit.marked.book, "Sorten");
  putRow(sheet, 0, 0, ["Sortenliste", "Eiswerkstatt am Mühlbach", undefined, "Export 14.06."]);
  sorten(kit, sheet, mades);
  lager(kit, sheet, 11);
  note(kit, sheet, 17, 1, "Nummern ab 101 gelten auch an der Kasse");
}

/** A workshop's list as a file. */
export const sortenlisten: readonly Layout[] = [
  {
    ...{ name: "breite Sortenliste einer Eiswerkstatt als Datei", language: "de" },
    ...{ isCsv: true, build: sortenliste },
  },
];
