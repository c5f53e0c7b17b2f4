import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { upTo } from "../strollers/words";
import { declare, readings, table } from "./words";

const SHEET = "Ansatz";

/** The batch, its sum and the shares above the lines, units in cells of their own. */
function batch(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const { heads, rows, names, amounts } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Rohstoff", "Einwaage", undefined, "Ant. %"],
      cells: (item, grams) => [item, shown(inUnit(grams, "kg"), "0.000"), "kg"],
    },
  );
  const total = sumOf(kit, sheet, { row: 2, column: 1 }, amounts, "0.000");
  put(sheet, 2, 0, "Ansatz gesamt");
  put(sheet, 2, 2, "kg");
  const alsoAmounts = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [total] },
    content: (spot) => `=${a1(spot)}/${fixed(total)}*100`,
  });
  sumOf(kit, sheet, { row: 2, column: 3 }, alsoAmounts, "0.0");
  const unitCells = rows.map((cells) => cells[2]!);
  const lines = { names, amounts, alsoAmounts, unitCells, amountLabel: heads[1]!, total };
  return markRecipe(kit, made, { ...lines, unit: "kg" });
}

/** What is left in store, and the chest's log. */
function besides(kit: Kit, sheet: CorpusSheet): void {
  table(sheet, { row: 2, column: 6 }, [
    ["Verpackung", "Bestand", "bestellen ab"],
    ["Becher 120 ml", 640, 200],
    ["Deckel", 580, 200],
    ["Holzlöffel", 1150, 300],
  ]);
  const heads = putRow(sheet, 7, 6, ["Eistruhe", "6:30 Uhr °C", "14:30 Uhr °C", "Hdz."]);
  const days = ["Mo", "Di", "Mi", "Do", "Fr"];
  days.forEach((each, index) => {
    put(sheet, 8 + index, 6, each);
    put(sheet, 8 + index, 9, ["RT", "RT", "Bö", "Bö", "RT"][index]);
  });
  readings(kit, sheet, heads[1]!, days.length, [-22, -19]);
  readings(kit, sheet, heads[2]!, days.length, [-20, -17]);
}

const SAID: readonly (readonly [string, string, ResultPlan])[] = [
  ["Gefrierpunkt der Masse", "°C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Gefrierpunktserniedrigung", "K", { states: "depression", as: "typed", decimals: 1 }],
  [
    "Eis in der Masse, Truhe bei −18 °C",
    ...(["%", { states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 }] as const),
  ],
  ["Zucker in der Masse", "Massen-%", { states: "sugar share", as: "typed", decimals: 1 }],
];

/** What hangs at the counter: for the guests above, for the staff below. */
function poster(kit: Kit, recipe: MarkedRecipe): void {
  const sheet = addSheet(kit.marked.book, "Aushang");
  put(sheet, 0, 0, `Heute an Theke 3: ${recipe.made.title}`);
  table(sheet, { row: 1, column: 0 }, [
    ["Becher Studierende", undefined, shown(0.9, "0.00"), "€"],
    ["Becher Gäste", undefined, shown(1.6, "0.00"), "€"],
    ["Ausgabe", undefined, "11:15–14:15", "Uhr"],
  ]);
  declare(sheet, recipe, { row: 5, column: 0 }, "Enthaltene Allergene:");
  const there = (spots: readonly Spot[]) => `${SHEET}!${span(spots)}`;
  let row = 8;
  for (const [words, unit, plan] of SAID) {
    const label = { sheet: sheet.name, row, column: 0 };
    const lines = `${there(recipe.names)},${there(recipe.amounts)}`;
    if (!resultAt(sheet, recipe, label, { row, column: 2 }, plan, () => lines)) continue;
    put(sheet, row, 0, words);
    put(sheet, row++, 3, unit);
  }
  nameTarget(sheet, recipe, { row, column: 0, label: "Konsistenz" });
  note(kit, sheet, row + 2, 0, "Unteren Teil vor dem Aufhängen abschneiden.");
}

/** One batch for a refectory's counter, its answers on the poster. */
function mensa(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, SHEET);
  const names = { Vollmilch: "Vollmilch 3,5 %", Magermilchpulver: "MMP", Honig: "Blütenhonig" };
  const made = called(upTo(kit.make(1)[0]!, 12000), names);
  put(sheet, 0, 0, `Mensa Süd, Kaltküche: ${made.title}`);
  const recipe = batch(kit, sheet, made);
  besides(kit, sheet);
  note(kit, sheet, 15, 6, "Über −16 °C: Truhe melden, Becher sperren.");
  poster(kit, recipe);
}

/** A university's refectory. */
export const mensen: readonly Layout[] = [
  { name: "Mensa Kaltküche, Ansatz und Aushang", language: "de", build: mensa },
];
