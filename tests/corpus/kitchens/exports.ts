import { addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Place } from "../layouts/parts";
import { inUnit } from "../list";
import { perHundred, type MadeRecipe } from "../recipes";
import { called, columnOf, stillMet, strip } from "./hand";

/** A sum that the program has rounded before it wrote it. */
const rounded = (
  sheet: CorpusSheet,
  { row, column }: Place,
  parts: readonly Spot[],
  decimals: number,
): Spot => put(sheet, row, column, `=ROUND(SUM(${span(parts)}),${decimals})`);

/** What the till's stock program writes: article numbers, units in cells, prices, values. */
function stockList(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Export");
  const made = called(kit.make(1)[0]!, { Zucker: "Kristallzucker" });
  putRow(sheet, 0, 0, ["Rezeptur", made.title]);
  const heads = putRow(sheet, 2, 0, [
    "Art.-Nr.",
    "Artikel",
    "Menge",
    "ME",
    "EK (€/kg)",
    "Wert (€)",
  ]);
  const rows = made.names.map((name, index) => {
    const kilograms = inUnit(made.grams[index]!, "kg");
    const price = name === "Wasser" ? 0.01 : random.whole(60, 1400) / 100;
    const value = Math.round(100 * kilograms * price) / 100;
    const number = 4000 + 10 * random.whole(1, 90) + index;
    return putRow(sheet, 3 + index, 0, [number, name, kilograms, "kg", price, value]);
  });
  const [names, amounts, unitCells] = [1, 2, 3].map((at) => columnOf(rows, at)) as [
    Spot[],
    Spot[],
    Spot[],
  ];
  const row = 3 + rows.length;
  putRow(sheet, row, 1, ["Summe", undefined, "kg"]);
  const total = rounded(sheet, { row, column: 2 }, amounts, 3);
  rounded(sheet, { row, column: 5 }, columnOf(rows, 5), 2);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unitCells, unit: "kg", amountLabel: heads[2]!, total },
  });
  let next = say(sheet, recipe, { row: row + 2, column: 1 }, [
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Wasser gesamt", inCell: "g", states: "water", as: "typed", decimals: 0 },
    {
      ...{ label: "Zucker je 100 g Wasser", inCell: "g" },
      ...{ states: "sugar per 100 g water", as: "typed", decimals: 1 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 1, label: "Verkauft als" });
  next = tell(kit, sheet, recipe, { row: next, column: 1, as: "pair" });
  note(kit, sheet, next + 1, 1, "Ausdruck für die Küche");
}

/** One recipe of the plan in per cent; gives the row where the next can begin. */
function planned(kit: Kit, made: MadeRecipe, top: number): number {
  const sheet = kit.marked.book.sheets[0]!;
  putRow(sheet, top, 0, ["Rezept:", made.title]);
  const heads = putRow(sheet, top + 1, 0, ["Bestandteil", "Massenanteil in %"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 2 + index, 0, [name, made.grams[index]]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const row = top + 2 + rows.length;
  put(sheet, row, 0, "Summe");
  const total = rounded(sheet, { row, column: 1 }, amounts, 1);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "%", amountLabel: heads[1]!, total },
  });
  strip(sheet, recipe, { row: top + 1, column: 3 }, [
    { label: "Gefrierpunkt in °C", states: "freezing point", as: "typed", decimals: 1 },
    {
      label: "Eis vom Wasser bei −18 °C in %",
      ...{ states: "ice of water", as: "typed", temperatureC: -18 },
    },
    {
      label: "Eis von der Mischung bei −18 °C in %",
      ...{ states: "ice of mix", as: "typed", temperatureC: -18 },
    },
    { label: "Gelöstes je 100 g in g", states: "dissolved", as: "typed", decimals: 1 },
  ]);
  nameTarget(sheet, recipe, { row: top + 4, column: 3, label: "Zielvorgabe" });
  return tell(kit, sheet, recipe, { row: row + 1, column: 0, as: "sentence" }) + 1;
}

/** The week's recipes one below the other, their results beside them. */
function plan(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Wochenplan");
  put(sheet, 0, 0, "Wochenplan KW 27");
  let top = 2;
  for (const made of kit.make(3)) top = planned(kit, stillMet(perHundred(made)), top);
}

/** Files of values with decimal commas. */
export const exportFiles: readonly Layout[] = [
  { name: "Warenwirtschaft als Datei", language: "de", isCsv: true, build: stockList },
  { name: "Wochenplan als Datei", language: "de", isCsv: true, build: plan },
];
