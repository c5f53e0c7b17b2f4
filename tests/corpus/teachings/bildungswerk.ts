import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { freezesAt, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside } from "../newcomers/words";
import { input } from "../page";
import { perHundred } from "../recipes";
import { temperatures } from "../strollers/words";
import { block, table, voice } from "./words";

const VOICE = voice(
  "Bitte beachten, enthält:",
  "Honig ist nichts für Kinder unter 12 Monaten.",
  "Mit Alkohol zubereitet: nicht für Kinder, Schwangere oder wer noch Auto fährt.",
  "Ganze Nüsse: Kinder unter 5 Jahren können daran ersticken.",
  "Rohes Eigelb: nur auf 71 °C erhitzt oder pasteurisiert verwenden.",
);

const SAID: readonly Said[] = [
  { label: "wird fest ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Zuckeranteil (%)", states: "sugar share", as: "typed", decimals: 0 },
  {
    label: "Wasser gefroren, wenn es −14 °C hat (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  },
  {
    label: "Eis in der ganzen Masse bei −18 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** The recipe as parts of one, worked out for the tub; gives the first row under it. */
function handout(kit: Kit, sheet: CorpusSheet): number {
  const own = { Zucker: "Feinzucker", "Sahne 35 %": "Schlagsahne 35 %" };
  const made = called(stillMet(perHundred(kit.make(1)[0]!)), own);
  put(sheet, 0, 0, "Eis ohne Maschine, Kurs 24-317");
  put(sheet, 1, 0, made.title);
  const value = kit.random.pick([450, 900, 1200]);
  const words = { label: "Dose fasst (g)", bare: "Dose fasst", value };
  const tub = input(kit, sheet, { row: 2, column: 0 }, words);
  const { recipe, end } = block(
    kit,
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["Zutaten", "Anteil (Summe 1)", "für die Dose (g)"],
      cells: (item, grams) => [item, shown(inUnit(grams, "fraction"), "0.000")],
      ...{ name: 0, amount: 1, unit: "fraction", format: "0.000", word: "Summe", isOver: true },
      also: ({ heads, amounts }) => {
        const all = beside(kit, heads[2]!, amounts, {
          ...{ sheet, format: "0", fixed: [tub] },
          content: (spot) => `=${fixed(tub)}*${a1(spot)}`,
        });
        sumOf(kit, sheet, { row: 4, column: 2 }, all, "0");
        return all;
      },
    },
  );
  const next = say(sheet, recipe, { row: end + 1, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "So soll es werden" });
  return tellIn(sheet, recipe, { row: next + 1, column: 0 }, VOICE);
}

const SYRUPS = ["leicht", "mittel", "schwer", "zum Einlegen"];

/** Sugar syrups for fruit, and what is good to know about the house. */
function besides(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 5, "Zuckersirup zum Tränken der Früchte");
  const heads = putRow(sheet, 1, 5, [
    ...["Sirup", "Zucker (g)", "Wasser (g)", "g Zucker auf 100 g Wasser"],
    ...["Zucker in Massen-%", "Gefrierpunkt (°C)"],
  ]);
  const rows = SYRUPS.map((word, index) => {
    const water = 50 * random.whole(6, 10);
    const sugar = Math.round((water * (0.3 + 0.16 * index)) / 10) * 10;
    const percent = (of: number) => shown(Number(((100 * sugar) / of).toFixed(1)), "0.0");
    const point = shown(freezesAt(["sucrose", "water"], [sugar, water]), "0.0");
    const line = [word, sugar, water, percent(water), percent(sugar + water), point];
    return putRow(sheet, 2 + index, 5, line);
  });
  rows.forEach(([, sugar, water, perWater, share]) =>
    marked.strengths.push({ sugar: sugar!, water: water!, perWater: perWater!, share: share! }),
  );
  temperatures(kit, heads[5]!, columnOf(rows, 5));
  table(sheet, { row: 8, column: 5 }, [
    ["Geschäftsstelle", "geöffnet"],
    ["Mo und Mi", "9 bis 12 Uhr"],
    ["Do", "15 bis 18 Uhr"],
    ["in den Ferien", "geschlossen"],
  ]);
  const [, ...fees] = table(sheet, { row: 13, column: 5 }, [
    ["Kosten", "€"],
    ["Kursgebühr", shown(38, "0.00")],
    ["Lebensmittelumlage", shown(random.whole(16, 24) / 2, "0.00")],
    ["Leihdose (Pfand)", shown(3, "0.00")],
  ]);
  put(sheet, 17, 5, "zu zahlen");
  sumOf(kit, sheet, { row: 17, column: 6 }, columnOf(fees, 1), "0.00");
}

/** A handout with what else is to be known at its right. */
function bildungswerk(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "24-317");
  const next = handout(kit, sheet);
  besides(kit, sheet);
  note(
    kit,
    sheet,
    Math.max(next, 18) + 1,
    0,
    "Bitte Schürze, Geschirrtuch und eine leere Dose mitbringen.",
  );
}

/** A regional education centre. */
export const bildungswerke: readonly Layout[] = [
  {
    name: "Bildungswerk, Eis ohne Maschine mit Sirup und Gebühren",
    ...{ language: "de", build: bildungswerk },
  },
];
