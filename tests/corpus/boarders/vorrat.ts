import { a1, addSheet, fixed, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { note, nameTarget, type Kit, type Layout } from "../kit";
import { markRecipe } from "../layouts/parts";
import { inUnit } from "../list";
import { about } from "../passing/words";
import type { MadeRecipe } from "../recipes";
import { columnsOf, labelAt, shopPhrases, tabulate, type Fact } from "./worte";

const FACTS: readonly Fact[] = [
  ["Gefrierpunkt (°C)", undefined, { states: "freezing point", as: "typed", decimals: 1 }],
  ["Wasser insgesamt je Ansatz (g)", undefined, { states: "water", as: "typed", decimals: 0 }],
  ["Zucker (% der Masse)", undefined, { states: "sugar share", as: "typed", decimals: 0 }],
  [
    "gefroren bei −16 °C (% vom Wasser)",
    undefined,
    { states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  ],
];

/** Steps from one kind to the kind beside it. */
const WIDE = 4;

interface Tall {
  /** The row under the longest list. */
  readonly end: number;
}

/** One kind: for one batch and for the week, in kilograms. */
function kind(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number, { end }: Tall): void {
  put(sheet, 2, column, made.title);
  const cells = ["Ansätze je Woche", kit.random.whole(2, 6)];
  const times = putRow(sheet, 3, column, cells)[1]!;
  const heads = putRow(sheet, 4, column, ["Zutat", "Ansatz (kg)", "Woche (kg)"]);
  const rows = made.names.map((name, index) => {
    const [item, amount] = putRow(sheet, 5 + index, column, [
      ...[name, inUnit(made.grams[index]!, "kg")],
    ]) as [Spot, Spot];
    const weekly = `=ROUND(${a1(amount)}*${fixed(times)},3)`;
    return [item, amount, put(sheet, 5 + index, column + 2, weekly)];
  });
  const [names, amounts, alsoAmounts] = columnsOf(rows, 0, 1, 2) as [Spot[], Spot[], Spot[]];
  put(sheet, end, column, "zusammen");
  const sum = (parts: readonly Spot[], at: number): Spot =>
    put(sheet, end, at, `=ROUND(SUM(${span(parts)}),3)`);
  const total = sum(amounts, column + 1);
  sum(alsoAmounts, column + 2);
  const marks = { names, amounts, alsoAmounts, total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...marks, unit: "kg" });
  const plan = { row: end + 1, column, facts: FACTS, value: 1, unit: 2 };
  const next = tabulate(sheet, recipe, plan);
  nameTarget(sheet, recipe, { row: next, column, label: "Wunsch" });
  const told = { lead: "Auf die Tafel:", phrases: shopPhrases };
  labelAt(sheet, recipe, { row: next + 1, column }, told);
}

/** Kinds beside each other with the week's amounts, as a file of values. */
function stores(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Vorrat");
  const mades = kit.make(3).map((made) => about(made, 6000));
  note(kit, sheet, 0, 0, `Eiswagen, Tour ${kit.random.pick(["Nord", "Süd", "Seeufer"])}`);
  const end = 5 + Math.max(...mades.map(({ names }) => names.length));
  mades.forEach((made, index) => kind(kit, sheet, made, WIDE * index, { end }));
}

/** The van's file. */
export const vorraete: readonly Layout[] = [
  { name: "Eiswagen, Wochenmengen als Datei", language: "de", isCsv: true, build: stores },
];
