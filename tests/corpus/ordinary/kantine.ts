import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { table } from "./words";

const VOICE: Voice = {
  lead: "Kennzeichnung Speiseplan:",
  honey: "Enthält Honig, nicht für Säuglinge unter 12 Monaten.",
  alcohol: "Enthält Alkohol, nicht für Kinder und Schwangere, nicht vor dem Autofahren.",
  nuts: "Enthält ganze Nüsse, Erstickungsgefahr bei Kindern unter 5 Jahren.",
  egg: "Rohes Eigelb wird auf 71 °C erhitzt.",
};

const ANSWERS: readonly Said[] = [
  { label: "Gefrierbeginn, °C", states: "freezing point", as: "formula" },
  {
    label: "davon Eis bei −16 °C, % der Masse",
    ...{ states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
  },
  { label: "Wasseranteil, g je 100 g", states: "water", as: "formula", format: "0.0" },
];

const ROSTER = [
  ["Dienst Nachtisch", "Küche", "Ausgabe"],
  ["Mo", "Fr. K.", "Hr. D."],
  ["Di", "Fr. K.", "Fr. W."],
  ["Mi", "Hr. P.", "Fr. W."],
  ["Do", "Hr. P.", "Hr. D."],
];

/** How many eat it, and so how many kilograms. */
function portions(kit: Kit, sheet: CorpusSheet): Spot {
  const eaters = putRow(sheet, 2, 0, ["Essen bestellt", 10 * kit.random.whole(12, 26)])[1]!;
  const words = { label: "Portion (g)", bare: "Portion", value: kit.random.pick([70, 80, 90]) };
  const portion = input(kit, sheet, { row: 3, column: 0 }, words);
  const content = shown(`=${a1(eaters)}*${a1(portion)}/1000`, "0.0");
  return putRow(sheet, 4, 0, ["Ansatz (kg)", content])[1]!;
}

/** Mass per cent, the largest first, and what to weigh. */
function dessert(kit: Kit, made: MadeRecipe, name: string): void {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, `Nachtisch: ${made.title}`);
  const batch = portions(kit, sheet);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 6, column: 0 },
    {
      heads: ["Bestandteil", "Massen-%", "Einwaage (kg)"],
      cells: (item, grams) => [item, shown(grams, "0.0")],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}/100`,
  });
  put(sheet, end, 0, "Kontrolle");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0.000");
  kit.marked.numberColumns.push({ spots: amounts, heading: heads[1]!, total, kind: "per cent" });
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "%" });
  const alcohol = ofAlcohol(made, "Alkohol, g je 100 g");
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, [...ANSWERS, ...alcohol]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Ausgabe als" });
  tellIn(sheet, recipe, { row: next + 1, column: 0 }, VOICE);
  table(sheet, { row: 2, column: 5 }, ROSTER);
}

/** A canteen that makes ice on two days of the week. */
function kantine(kit: Kit): void {
  const [first, second] = kit.make(2).map((made) => largestFirst(made));
  dessert(kit, first!, "Dienstag");
  dessert(kit, second!, "Donnerstag");
  const sheet = kit.marked.book.sheets[1]!;
  note(kit, sheet, 9, 5, "Reste nicht wieder einfrieren, Rückstellprobe 100 g.");
}

/** A works canteen. */
export const kantinen: readonly Layout[] = [
  {
    name: "Betriebskantine, Nachtisch nach Massenprozent an zwei Tagen",
    language: "de",
    build: kantine,
  },
];
