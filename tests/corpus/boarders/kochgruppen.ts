import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { down } from "../callers/desk";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { forChildren } from "../passing/words";
import type { MadeRecipe } from "../recipes";
import { columnsOf, labelAt, sized, tabulate, type Fact, type Phrases } from "./worte";

const PHRASES: Phrases = [
  [/^Honig/, "Honig ist nichts für Babys unter 1 Jahr"],
  [/^Ganze Nüsse/, "ganze Nüsse nicht für Kinder unter 5 Jahren, Erstickungsgefahr"],
  [/^Rohes Eigelb/, "rohes Eigelb: auf 71 °C erhitzen"],
];

/** What one cooking group takes, and what all of them need. */
function ingredients(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const groups = putRow(sheet, 2, 0, ["Kochgruppen", kit.random.whole(4, 6)])[1]!;
  const heads = putRow(sheet, 4, 0, ["Zutaten", "für eine Gruppe in g", "für alle in g"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 5 + index, 0, [name, made.grams[index]]),
  );
  const [names, amounts] = columnsOf(rows, 0, 1) as [Spot[], Spot[]];
  const end = 5 + rows.length;
  put(sheet, end, 0, "Summe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const alsoAmounts = down(kit, sheet, amounts, {
    ...{ heading: heads[2]!, format: "0", fixed: [groups], end },
    formula: (cell) => `=${fixed(groups)}*${cell}`,
  });
  const marks = { names, amounts, alsoAmounts, total, amountLabel: heads[1]! };
  return markRecipe(kit, made, { ...marks, unit: "g" });
}

/** Questions, with what the teacher wants to read. */
const QUESTIONS: readonly Fact[] = [
  [
    "1. Wie viel Gramm Wasser stecken in allen Zutaten einer Gruppe zusammen?",
    "g",
    { states: "water", as: "typed", decimals: 0 },
  ],
  [
    "2. Wie viel Gramm Zucker kommen auf 100 g Wasser?",
    "g",
    { states: "sugar per 100 g water", as: "typed", decimals: 0 },
  ],
  ["3. Wie viel Prozent der Masse sind Zucker?", "%", { states: "sugar share", as: "typed" }],
  [
    "4. Bei welcher Temperatur beginnt die Masse zu gefrieren?",
    "°C",
    { states: "freezing point", as: "typed", decimals: 1 },
  ],
  [
    "5. Wie viel Prozent des Wassers sind im Gefrierfach (−18 °C) gefroren?",
    "%",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
];

/** Sugar waters that the groups stir and taste first. */
function sugarWaters(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Station 1: Zuckerwasser rühren, kosten, einfrieren");
  const heads = putRow(sheet, 2, 0, [
    ...["Becher", "Zucker in g", "Wasser in g", "Massenprozent Zucker"],
    "g Zucker je 100 g Wasser",
  ]);
  const rows = [1, 2, 3, 4, 5].map((cup) => {
    const row = 2 + cup;
    const [, sugar, water] = putRow(sheet, row, 0, [
      ...[cup, 10 * random.whole(3 * cup, 3 * cup + 2), 50 * random.whole(4, 6)],
    ]) as [Spot, Spot, Spot];
    const both = `(${a1(sugar)}+${a1(water)})`;
    const share = put(sheet, row, 3, shown(`=${a1(sugar)}/${both}*100`, "0.0"));
    const perWater = put(sheet, row, 4, shown(`=${a1(sugar)}/${a1(water)}*100`, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [share, perWater];
  });
  columnsOf(rows, 0, 1).forEach((spots, at) =>
    marked.formulaColumns.push({ spots, heading: heads[3 + at]!, fixed: [] }),
  );
  note(kit, sheet, 9, 0, "Becher beschriften, sonst weiß nachher keiner, welcher welcher war.");
}

/** Sugar waters first, then the ice with its questions. */
function practice(kit: Kit): void {
  sugarWaters(kit, addSheet(kit.marked.book, "Station 1"));
  const sheet = addSheet(kit.marked.book, "Station 2");
  const made = sized(forChildren(kit, 1)[0]!, 10 * kit.random.whole(60, 95));
  put(sheet, 0, 0, `Station 2: ${made.title}`);
  const recipe = ingredients(kit, sheet, made);
  const top = recipe.total!.row + 2;
  putRow(sheet, top, 0, ["Fragen zum Rezept", "Lösung"]);
  const plan = { row: top + 1, column: 0, facts: QUESTIONS, value: 1, unit: 2 };
  const next = tabulate(sheet, recipe, plan);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "So soll es werden" });
  const told = { lead: "Allergie? Drin ist:", phrases: PHRASES };
  labelAt(sheet, recipe, { row: next + 2, column: 0 }, told);
}

/** A home economics teacher's stations. */
export const kochgruppen: readonly Layout[] = [
  { name: "Hauswirtschaft, Stationen für Kochgruppen", language: "de", build: practice },
];
