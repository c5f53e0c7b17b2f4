import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { allergensBeside, costsBeside, fact, paid } from "./words";

const VOICE: Voice = {
  lead: "Kennzeichnung:",
  honey: "enthält Honig, nicht für Säuglinge bis 12 Monate.",
  alcohol: "enthält Alkohol, nicht für Kinder, Schwangere und Staplerfahrer.",
  nuts: "ganze Nüsse, für Kinder unter 5 Jahren Erstickungsgefahr (Kita-Essen!).",
  egg: "rohes Eigelb, Kerntemperatur 71 °C oder Pasteurisiertes.",
};

const WORDS = {
  ...{ "Dextrose-Monohydrat": "Dextrose (Monohydrat)", Heidelbeeren: "Heidelbeeren TK" },
  ...{ Apfelmus: "Apfelmus ungesüßt", Kakaopulver: "Backkakao", Banane: "Bananen" },
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Senkung ggü. Wasser", inCell: "K", states: "depression", as: "formula", format: "0.0" },
  {
    label: "Eis an der Ausgabe (−12 °C), Anteil am Wasser",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 },
  },
  { label: "Zucker im Eis", inCell: "%", states: "sugar share", as: "typed", decimals: 1 },
];

const MENU = [
  ["Mo", "Linseneintopf", "Eis"],
  ["Di", "Fischfilet", "Obst"],
  ["Mi", "Nudelauflauf", "Eis"],
  ["Do", "Gulasch", "Quark"],
  ["Fr", "Reispfanne", "Eis"],
] as const;

/** Fractions, grams for the tray beside them, what they cost. */
function list(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, tray: Spot) {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Komponente", "Anteil (1 = alles)", "Blech kg", "€/kg", "€ je Blech", "Allergen"],
      cells: (name, share, index) => [
        ...[name, shown(inUnit(share, "fraction"), "0.000"), undefined],
        shown(paid(kit, made.lines[index]!.en), "0.00"),
      ],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [tray] },
    content: (spot) => `=${a1(spot)}*${fixed(tray)}`,
  });
  const costs = costsBeside(kit, sheet, heads[4]!, alsoAmounts, { column: 3, isPerKg: true });
  put(sheet, end, 0, "Σ");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0.000");
  const cost = sumOf(kit, sheet, { row: end, column: 4 }, costs, "0.00");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, total, unit: "fraction", amountLabel: heads[1]! },
  });
  allergensBeside(kit, sheet, recipe, 5);
  return { recipe, cost, end };
}

/** One ice of a canteen, in fractions, the week's menu at the right. */
function kantine(kit: Kit): void {
  const made = called(largestFirst(kit.make(1)[0]!), WORDS);
  const sheet = addSheet(kit.marked.book, "Nachtisch");
  put(sheet, 0, 0, `Nachtisch ${made.title}`);
  const words = { label: "Ein Blech (kg)", bare: "Ein Blech", value: kit.random.pick([6, 8, 9.5]) };
  const tray = input(kit, sheet, { row: 2, column: 0 }, words);
  const { recipe, cost, end } = list(kit, sheet, made, tray);
  const cuts = fact(sheet, { row: end + 2, column: 0 }, "Stücke je Blech", 84);
  const each = `=${a1(cost)}/${a1(cuts)}`;
  fact(sheet, { row: end + 3, column: 0 }, "Ware je Stück €", each, "0.000");
  const next = say(sheet, recipe, { row: end + 5, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Vorgabe" });
  tellIn(sheet, recipe, { row: next + 2, column: 0 }, VOICE);
  putRow(sheet, 4, 7, ["Plan KW 24", "Hauptgang", "Nachtisch"]);
  MENU.forEach((cells, index) => putRow(sheet, 5 + index, 7, cells));
  const heading = putRow(sheet, 12, 7, ["Kühlhaus", "Soll °C", "Ist °C"]);
  const rows = ["TK-Raum", "TK-Truhe links", "TK-Truhe Ausgabe"].map((room, index) => {
    const wanted = index < 2 ? -20 : -13;
    const read = wanted + kit.random.whole(-3, 3) / 2;
    return putRow(sheet, 13 + index, 7, [room, wanted, shown(read, "0.0")]);
  });
  [1, 2].forEach((at) => {
    const spots = rows.map((cells) => cells[at]!);
    const column = { spots, heading: heading[at]!, total: null };
    kit.marked.numberColumns.push({ ...column, kind: "temperature" });
  });
  note(kit, sheet, 17, 7, "Türdichtung links im Auge behalten");
}

/** A works canteen. */
export const kantinen: readonly Layout[] = [
  { name: "Kantine, Anteile als Bruch und ein Blech daneben", language: "de", build: kantine },
];
