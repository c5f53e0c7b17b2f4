import { a1, addSheet, put, putRow, shown, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";

const BOTTLES = [
  ["Kirschwasser", 40],
  ["Rum, braun", 54],
  ["Weinbrand", 38],
  ["Zwetschgenbrand", 45],
  ["Birnenbrand", 42],
] as const;

/** What alcohol the spirits bring into a torte's filling or a mix. */
export function spirits(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Spirituosen");
  put(sheet, 0, 0, "Spirituosen für Halbgefrorenes, je Torte");
  const heads = putRow(sheet, 2, 0, [
    ...["Flasche", "Einwaage (g)", "% vol", "reiner Alkohol (g)", "Anbruch"],
  ]);
  const rows = BOTTLES.map(([bottle, strength], index) => {
    const row = 3 + index;
    const cells = putRow(sheet, row, 0, [bottle, 5 * random.whole(4, 16), strength]);
    const [, grams, abv] = cells as [Spot, Spot, Spot];
    const formula = `=${a1(grams)}*RIME.ABVTOMASSFRACTION(${a1(abv)})`;
    const alcohol = put(sheet, row, 3, shown(formula, "0.0"));
    put(sheet, row, 4, `KW ${random.whole(10, 40)}`);
    marked.alcohols.push({ grams, abv, alcohol });
    return [grams, alcohol];
  });
  marked.formulaColumns.push({ spots: columnOf(rows, 1), heading: heads[3]!, fixed: [] });
  put(sheet, 8, 0, "Summe");
  sumOf(kit, sheet, { row: 8, column: 3 }, columnOf(rows, 1), "0.0");
  const words = "Alles mit Alkohol: nicht für Kinder, Schwangere und vor dem Fahren.";
  marked.recipes[0]!.flags.push(put(sheet, 10, 0, words));
}
