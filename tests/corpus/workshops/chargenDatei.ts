import { addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { temperatures, upTo } from "../strollers/words";
import { rowsOf, WARNT } from "./words";

const WERTE: readonly Said[] = [
  { label: "Gefrierpunkt °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Gefrierpunktserniedrigung K", states: "depression", as: "typed", decimals: 1 },
  { label: "Wasser gesamt g", states: "water", as: "typed", decimals: 0 },
  { label: "gelöste Stoffe g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Wasser gefroren bei −15 °C in %",
    ...{ states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

/** One batch: who made it, what went in, what came out; gives the next free row. */
function charge(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, nummer: number, top: number) {
  rowsOf(sheet, { row: top, column: 0 }, [
    ["Charge", nummer, made.title],
    ["Hergestellt", `${kit.random.whole(2, 27)}. September`, "Anlage 2"],
  ]);
  const heads = putRow(sheet, top + 2, 0, ["Rohstoff", "Soll g", "Lieferschein"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 3 + index, 0, [
      ...[name, made.grams[index]!, `LS ${kit.random.whole(10400, 10999)}`],
    ]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const end = top + 3 + rows.length;
  put(sheet, end, 0, "Chargengewicht");
  const total = put(sheet, end, 1, `=SUM(${span(amounts)})`);
  kit.marked.sums.push({ spot: total, parts: amounts });
  const cells = { names, amounts, unit: "g", total, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: end + 1, column: 0 }, WERTE);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Vorgabe" });
  return tellIn(sheet, recipe, { row: next + 1, column: 0 }, WARNT) + 1;
}

/** Batches one below the other, then the readings of the deep freezer. */
function datei(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Chargen");
  put(sheet, 0, 0, "Chargenbuch Eismanufaktur, Ausgabe der Wiegestation");
  const own = { Zucker: "Kristallzucker", Salz: "Speisesalz", "Sahne 35 %": "Schlagsahne 35 %" };
  let top = 2;
  kit.make(4).forEach((made, at) => {
    top = charge(kit, sheet, called(upTo(made, 12000), own), 24061 + at, top);
  });
  const heads = putRow(sheet, top, 0, ["Schockfroster", "Einlauf °C", "Auslauf °C"]);
  const rows = [1, 2, 3, 4].map((at): Spot[] =>
    putRow(sheet, top + at, 0, [
      ...[`Charge ${24060 + at}`, -kit.random.whole(52, 68) / 10, -kit.random.whole(181, 229) / 10],
    ]),
  );
  temperatures(kit, heads[1]!, columnOf(rows, 1));
  temperatures(kit, heads[2]!, columnOf(rows, 2));
  note(kit, sheet, top + 6, 0, "Ausgabe ohne Nachträge von Hand");
}

/** What a weighing station gives out, values only. */
export const chargenDateien: readonly Layout[] = [
  { name: "Eismanufaktur, Chargenbuch als Datei", language: "de", isCsv: true, build: datei },
];
