import { addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, tell, type Kit } from "../kit";
import { largestFirst } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { lines } from "../strangers/zeilen";
import { alcoholIn } from "../visitors/lines";

/** A sum as the program writes it into the file. */
const written = (sheet: CorpusSheet, parts: readonly Spot[], decimals: number): Spot => {
  const { row, column } = parts.at(-1)!;
  return put(sheet, row + 1, column, `=ROUND(SUM(${span(parts)}),${decimals})`);
};

const KEEP = "Bei −18 °C lagern, nach dem Auftauen nicht wieder einfrieren.";

const said = (made: MadeRecipe): Said[] => [
  { label: "Gefrierpunkt in °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Gesamtzucker in g je 100 g", states: "sugar share", as: "typed" },
  { label: "Wasser in g je 100 g", states: "water", as: "typed", decimals: 1 },
  ...alcoholIn(made, {
    ...{ label: "Alkohol in g je 100 g", states: "alcohol", as: "typed", decimals: 1 },
  }),
  {
    ...{ label: "Eis von der Masse bei −18 °C in %", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -18 },
  },
];

/** One label: what is in the tub in order of weight; gives the next free row. */
function tub(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): number {
  const kilograms = kit.random.pick([12, 15, 18, 24]);
  putRow(sheet, top, 0, ["Bezeichnung", made.title, "Füllmenge in ml", 125 * (1 + (top % 4))]);
  const heads = putRow(sheet, top + 1, 0, ["Nr.", "Zutat", "Anteil in %", "Charge in kg"]);
  const place = { row: top + 2, column: 0 };
  const cells = lines(sheet, place, made, (name, share, index) => [
    ...[index + 1, name, share, Math.round(10 * share * kilograms) / 1000],
  ]);
  const [, names, amounts, weights] = cells as [Spot[], Spot[], Spot[], Spot[]];
  const total = written(sheet, amounts, 1);
  written(sheet, weights, 3);
  put(sheet, total.row, 1, "Summe");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: weights, unit: "%", amountLabel: heads[2]!, total },
  });
  const next = say(sheet, recipe, { row: total.row + 1, column: 1 }, said(made));
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Verzehr" });
  put(sheet, sheet.cells.length, 1, KEEP);
  const end = { row: sheet.cells.length, column: 1, as: "pair" } as const;
  return tell(kit, sheet, recipe, end) + 1;
}

/** What the farm sends to the printer, the heaviest first as a label has to have it. */
export function labels(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Etiketten");
  let top = 0;
  for (const made of kit.make(3)) top = tub(kit, sheet, largestFirst(made), top);
}
