import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { perHundred, type MadeRecipe } from "../recipes";
import { isBoozy, suited, tellBelow } from "./words";

const SAID: readonly Said[] = [
  { label: "Gefriert ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser in 100 g (g)", states: "water", as: "typed", decimals: 1 },
  { label: "Gelöstes in 100 g (g)", states: "dissolved", as: "typed", decimals: 1 },
  {
    label: "Wasser gefroren bei −18 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    label: "Eis in der Mischung bei −18 °C (%)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    label: "Zucker je 100 g Wasser (g)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 0,
  },
];

const ALCOHOL: Said = {
  label: "Alkohol in 100 g (g)",
  ...{ states: "alcohol", as: "typed", decimals: 1 },
};

const saidOf = (made: MadeRecipe): readonly Said[] => (isBoozy(made) ? [...SAID, ALCOHOL] : SAID);

const hasHoney = ({ lines }: MadeRecipe): boolean => lines.some(({ en }) => en === "honey");

/** One kind, its lines in per cent; gives the row where the next may begin. */
function kind(kit: Kit, sheet: CorpusSheet, top: number, given: MadeRecipe): number {
  const made = called(stillMet(perHundred(given)), { Zucker: "Rübenzucker", Honig: "Blütenhonig" });
  put(sheet, top, 0, `Sorte: ${made.title}`);
  const heads = putRow(sheet, top + 1, 0, ["Rohstoff", "Prozent"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 2 + index, 0, [name, made.grams[index]]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const end = top + 2 + rows.length;
  put(sheet, end, 0, "Ergibt");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "%", amountLabel: heads[1]!, total },
  });
  const next = say(sheet, recipe, { row: end + 1, column: 0 }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Gedacht für" });
  return tellBelow(sheet, recipe, { row: next + 1, column: 0 }, "Auf den Deckel: enthält") + 1;
}

/** The kinds that a beekeeper has made for the shop, kept as a plain file. */
function beekeeper(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eissorten");
  put(sheet, 0, 0, "Eissorten der Imkerei, je 100 g Mischung");
  const last = suited(kit, 4, hasHoney).reduce((row, made) => kind(kit, sheet, row, made), 2);
  note(kit, sheet, last, 0, "Honig nur handwarm einrühren.");
}

/** A beekeeper who sells ice. */
export const imkereien: readonly Layout[] = [
  {
    name: "Imkerei, Eissorten in Prozent als Datei",
    language: "de",
    isCsv: true,
    build: beekeeper,
  },
];
