import { a1, addSheet, put, putRow, shown, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";

const BOTTLES = [
  ["Grape brandy 38 %", 38],
  ["Coffee liqueur 20 %", 20],
  ["Dark rum 40 %", 40],
  ["Plum spirit 45 %", 45],
] as const;

/** What is poured at the table, and the alcohol in it; gives the warning for the menu. */
export function poured({ marked, random }: Kit): Spot {
  const sheet = addSheet(marked.book, "Poured at table");
  const headings = ["Bottle", "Pour for a plate (g)", "Pure alcohol (g)", "Strength (% vol)"];
  const heads = putRow(sheet, 1, 1, headings);
  const rows = BOTTLES.map(([bottle, strength], index) => {
    const row = 2 + index;
    const pour = [bottle, random.whole(10, 22), undefined, strength];
    const [, grams, , abv] = putRow(sheet, row, 1, pour) as [Spot, Spot, Spot, Spot];
    const content = `=${a1(grams)}*RIME.ABVTOMASSFRACTION(${a1(abv)})`;
    const alcohol = put(sheet, row, 3, shown(content, "0.0"));
    marked.alcohols.push({ grams, abv, alcohol });
    return [alcohol];
  });
  marked.formulaColumns.push({ spots: columnOf(rows, 0), heading: heads[2]!, fixed: [] });
  const text = "Contains alcohol: not for children, not in pregnancy, not before driving.";
  return put(sheet, 7, 1, text);
}
