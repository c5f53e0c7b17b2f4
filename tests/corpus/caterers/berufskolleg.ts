import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { solutionRows } from "../solutionRows";
import { readings } from "../pilgrims/words";
import { tellIn, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Kennzeichnung: enthält",
  honey: "Honig: unter 12 Monaten ungeeignet.",
  alcohol: "Alkohol: nicht für Kinder, in der Schwangerschaft oder vor dem Fahren.",
  nuts: "Ganze Nüsse: Erstickungsgefahr unter 5 Jahren.",
  egg: "Rohes Eigelb: Kerntemperatur 71 °C oder pasteurisierte Ware.",
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunktserniedrigung ΔT in K", states: "depression", as: "formula" },
  { label: "Massenanteil Zucker in %", states: "sugar share", as: "typed", decimals: 1 },
  { label: "Wasser in 100 g Mischung in g", states: "water", as: "typed", decimals: 1 },
  {
    label: "Anteil des gefrorenen Wassers bei −18 °C in %",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 1 },
  },
];

/** A recipe in parts of one, and what each group weighs of it; gives the next free row. */
function mixture(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, pot: Spot): number {
  put(sheet, top, 0, `Rezept: ${made.title}`);
  const list = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["Nr.", "Bestandteil", "Massenanteil w", "Einwaage je Gruppe (g)"],
      cells: (name, grams, index) => [index + 1, name, shown(inUnit(grams, "fraction"), "0.000")],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, names, amounts, end } = list;
  const alsoAmounts = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [pot] },
    content: (spot) => `=${a1(spot)}*${fixed(pot)}`,
  });
  put(sheet, end, 1, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end, column: 3 }, alsoAmounts, "0.0");
  const cells = { names, amounts, alsoAmounts, amountLabel: heads[2]!, total } as const;
  const recipe = markRecipe(kit, made, { ...cells, unit: "fraction" });
  const column = { spots: amounts, heading: heads[2]!, total };
  kit.marked.numberColumns.push({ ...column, kind: "fraction" });
  const next = say(sheet, recipe, { row: top + 2, column: 5 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Vorgabe" });
  return Math.max(tellIn(sheet, recipe, { row: end + 1, column: 1 }, VOICE), next + 1) + 1;
}

const GROUPS = ["Gruppe 1", "Gruppe 2", "Gruppe 3", "Gruppe 4"];

/** What the groups read off their thermometers. */
function measured(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  const heads = putRow(sheet, 13, 0, ["Gruppe", "Kältebad (°C)", "Schrank nachher (°C)"]);
  const rows = GROUPS.map((group, index) =>
    putRow(sheet, 14 + index, 0, [
      ...[group, shown(-random.whole(80, 120) / 10, "0.0")],
      shown(-random.whole(165, 205) / 10, "0.0"),
    ]),
  );
  readings(kit, heads[1]!, rows, 1);
  readings(kit, heads[2]!, rows, 2);
}

/** Recipes in parts, and the law with five solutions by hand. */
function berufskolleg(kit: Kit): void {
  const { book } = kit.marked;
  const sheet = addSheet(book, "Rezepte");
  put(sheet, 0, 0, "Berufskolleg Ernährung, Lernsituation Speiseeis");
  const words = { label: "Ansatz je Gruppe (g)", bare: "Ansatz je Gruppe" };
  const value = kit.random.pick([400, 500, 600]);
  const pot = input(kit, sheet, { row: 1, column: 1 }, { ...words, value });
  let top = 3;
  for (const made of kit.make(3)) top = mixture(kit, sheet, largestFirst(made), top, pot);
  note(kit, sheet, top, 1, "Protokoll bis Donnerstag, eines je Gruppe.");
  const law = addSheet(book, "Gefrierpunkt");
  solutionRows(kit, law, {
    ...{ top: 0, left: 0, constant: "Kryoskopische Konstante von Wasser (K·kg/mol)" },
    headings: [
      ...(["Gelöster Stoff", "m in g", "Wasser in g", "M in g/mol"] as const),
      ...(["Teilchen i", "b in mol/kg", "ΔT in K", "T in °C"] as const),
    ],
    proviso: (gap) => `Ideales Gesetz; Messwerte weichen hier um höchstens ${gap} K davon ab.`,
  });
  measured(kit, law);
}

/** A vocational school. */
export const berufskollegs: readonly Layout[] = [
  { name: "Berufskolleg, Massenanteile und fünf Lösungen", language: "de", build: berufskolleg },
];
