import { addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Place, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { perHundred, type MadeRecipe } from "../recipes";
import { columnOf, stillMet } from "../kitchens/hand";
import { lineRows, usualPrice } from "./shared";

/** A sum as the program rounds it when it writes the file. */
const written = (
  sheet: CorpusSheet,
  { row, column }: Place,
  parts: readonly Spot[],
  decimals: number,
): Spot => put(sheet, row, column, `=ROUND(SUM(${span(parts)}),${decimals})`);

type Columns = [Spot[], Spot[], Spot[]];

interface Block {
  readonly top: number;
  readonly batchKg: number;
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "typed" },
  { label: "Wasser (% der Mischung)", states: "water", as: "typed", decimals: 1 },
  { label: "Zucker (% der Mischung)", states: "sugar share", as: "typed" },
  {
    label: "Eis bei −18 °C (% der Mischung)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18 },
  },
];

/** The lines of a mix: shares, kilograms, euros. */
function mixLines(kit: Kit, made: MadeRecipe, { top, batchKg }: Block): MarkedRecipe {
  const sheet = kit.marked.book.sheets[0]!;
  const heads = putRow(sheet, top, 0, [
    ...["Rohstoff", "Anteil (%)", "Einwaage (kg)", "Preis (€/kg)", "Kosten (€)"],
  ]);
  const rows = lineRows(sheet, { row: top + 1, column: 0 }, made, (index) => {
    const share = made.grams[index]!;
    const kilograms = Math.round(share * batchKg * 10) / 1000;
    const price = usualPrice(kit.random, made.lines[index]!.en);
    return [made.names[index], share, kilograms, price, Number((kilograms * price).toFixed(2))];
  });
  const [names, amounts, alsoAmounts] = [0, 1, 2].map((at) => columnOf(rows, at)) as Columns;
  const row = top + 1 + rows.length;
  put(sheet, row, 0, "Gesamt");
  const total = written(sheet, { row, column: 1 }, amounts, 1);
  written(sheet, { row, column: 2 }, alsoAmounts, 3);
  written(sheet, { row, column: 4 }, columnOf(rows, 4), 2);
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[1]! };
  return markRecipe(kit, made, { ...cells, unit: "%" });
}

/** One mix of the file; gives the next free row. */
function mix(kit: Kit, made: MadeRecipe, { top, batchKg }: Block): number {
  const sheet = kit.marked.book.sheets[0]!;
  putRow(sheet, top, 0, ["Mischung", made.title, "Charge (kg)", batchKg]);
  const recipe = mixLines(kit, made, { top: top + 1, batchKg });
  let next = say(sheet, recipe, { row: recipe.total!.row + 1, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "Vorgabe" });
  next = tell(kit, sheet, recipe, { row: next, column: 0, as: "pair" });
  return next + 1;
}

/** Two mixes of a small producer as a file with decimal commas. */
function mixes(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Mischungen");
  putRow(sheet, 0, 0, ["Mischungen Sommer", "Stand 14.05."]);
  let top = 2;
  for (const made of kit.make(2).map((each) => stillMet(perHundred(each)))) {
    top = mix(kit, made, { top, batchKg: kit.random.pick([2, 5, 10, 20]) });
  }
  note(kit, sheet, top, 0, "Preise ohne Steuer");
}

/** Files of values with decimal commas. */
export const files: readonly Layout[] = [
  { name: "Mischungen mit Kosten als Datei", language: "de", isCsv: true, build: mixes },
];
