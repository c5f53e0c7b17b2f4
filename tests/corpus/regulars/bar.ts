import { a1, addSheet, put, putRow, shown, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";

const SHOTS = [
  ["vodka 37.5 %", 37.5],
  ["gin 40 %", 40],
  ["raspberry liqueur 18 %", 18],
  ["apple brandy 42 %", 42],
  ["coffee liqueur 20 %", 20],
] as const;

/** What goes over the sorbet on request; gives the warning under it. */
export function bar(kit: Kit): Spot {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Drinks");
  put(sheet, 0, 0, "Poured over a scoop");
  const heads = putRow(sheet, 2, 0, ["Bottle", "ABV (%)", "Shot (g)", "Alcohol in a shot (g)"]);
  const rows = SHOTS.map(([bottle, strength], index) => {
    const contents = [bottle, strength, random.whole(14, 26)];
    const [, abv, grams] = putRow(sheet, 3 + index, 0, contents) as [Spot, Spot, Spot];
    const pure = `=RIME.ABVTOMASSFRACTION(${a1(abv)})*${a1(grams)}`;
    const alcohol = put(sheet, 3 + index, 3, shown(pure, "0.0"));
    marked.alcohols.push({ grams, abv, alcohol });
    return [alcohol];
  });
  const spots = columnOf(rows, 0);
  marked.formulaColumns.push({ spots, heading: heads[3]!, fixed: [] });
  put(sheet, 8, 0, "One of each");
  sumOf(kit, sheet, { row: 8, column: 3 }, spots, "0.0");
  const text = "Contains alcohol: not for children, not in pregnancy, not before driving.";
  return put(sheet, 10, 0, text);
}
