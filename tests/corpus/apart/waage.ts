import { addSheet, put, putRow, span, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, strip } from "../kitchens/hand";
import { markRecipe, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, temperatures, upTo } from "../strollers/words";

const VOICE: Voice = {
  lead: "ENTHÄLT",
  honey: "HONIG: NICHT FÜR KINDER UNTER 12 MONATEN.",
  alcohol: "ALKOHOL: NICHT FÜR KINDER, SCHWANGERE UND FAHRER.",
  nuts: "GANZE NÜSSE: ERSTICKUNGSGEFAHR UNTER 5 JAHREN.",
  egg: "ROHES EIGELB: MASSE AUF 71 °C ERHITZEN ODER PASTEURISIERTES NEHMEN.",
};

const answers = (made: MadeRecipe): readonly Said[] => [
  { label: "Gefrierpunkt °C", states: "freezing point", as: "typed" },
  { label: "Gefrierpunktserniedrigung K", states: "depression", as: "typed" },
  { label: "Wasser g", states: "water", as: "typed", decimals: 0 },
  { label: "Gelöstes g", states: "dissolved", as: "typed", decimals: 0 },
  ...ofAlcohol(made, "Alkohol g"),
  { label: "Zucker % der Charge", states: "sugar share", as: "typed" },
  {
    label: "Wasser gefroren bei -18 °C in %",
    states: "ice of water",
    as: "typed",
    temperatureC: -18,
  },
  {
    label: "Eis in der Charge bei -14 °C in %",
    states: "ice of mix",
    as: "typed",
    temperatureC: -14,
  },
];

/** A batch in two long rows, its answers in two more; gives the row for the next. */
function batch(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, nr: number): number {
  putRow(sheet, top, 0, ["Charge", nr, made.title, "Wiegeplatz", kit.random.whole(1, 3)]);
  put(sheet, top + 1, 0, "Zutat");
  const names = putRow(sheet, top + 1, 1, made.names);
  const label = put(sheet, top + 2, 0, "Gramm");
  const amounts = putRow(sheet, top + 2, 1, made.grams);
  put(sheet, top + 1, 1 + names.length, "Charge gesamt");
  const total = put(sheet, top + 2, 1 + names.length, `=SUM(${span(amounts)})`);
  kit.marked.sums.push({ spot: total, parts: amounts });
  const lines = { names, amounts, amountLabel: label, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, lines);
  strip(sheet, recipe, { row: top + 3, column: 1 }, answers(made));
  nameTarget(sheet, recipe, { row: top + 5, column: 0, label: "Ziel" });
  return tellIn(sheet, recipe, { row: top + 6, column: 0 }, VOICE) + 1;
}

const HOURS = ["6 Uhr", "9 Uhr", "12 Uhr", "15 Uhr", "18 Uhr"];

/** Batches as the scales write them, every list across, and the cold room's day. */
function waage(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Tagesdatei");
  putRow(sheet, 0, 0, ["Tagesdatei", "Freitag", "Schicht 2"]);
  let top = 2;
  kit.make(3).forEach((made, index) => {
    const own = { Zucker: "Weißzucker", Salz: "Kochsalz", Kakaopulver: "Kakao" };
    top = batch(kit, sheet, called(upTo(made, 20000), own), top, 417 + index);
  });
  putRow(sheet, top, 0, ["Kühlzelle", ...HOURS]);
  const heading = put(sheet, top + 1, 0, "Lufttemperatur °C");
  const read = putRow(
    sheet,
    top + 1,
    1,
    HOURS.map(() => -random.whole(201, 239) / 10),
  );
  temperatures(kit, heading, read);
  putRow(sheet, top + 2, 0, ["Tür offen min", ...HOURS.map(() => random.whole(0, 14))]);
  note(kit, sheet, top + 4, 0, "Wiegeplatz 2 am Montag nachkalibrieren lassen");
}

/** What the scales of a small factory write. */
export const waagen: readonly Layout[] = [
  {
    ...{ name: "Tagesdatei der Waage, jede Charge quer", language: "de" },
    isCsv: true,
    build: waage,
  },
];
