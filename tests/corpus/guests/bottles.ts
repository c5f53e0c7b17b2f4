import { a1, put, putRow, type CorpusSheet } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside } from "../newcomers/words";

/** The bottles of the week: what is in them by weight. */
export function bottles(kit: Kit, sheet: CorpusSheet, top: number, { flags }: MarkedRecipe): void {
  put(sheet, top, 0, "Bottles in the pastry, alcohol by weight");
  const heads = putRow(sheet, top + 1, 0, ["Bottle", "poured, g", "% vol", "pure alcohol, g"]);
  const poured: readonly (readonly [string, number])[] = [
    ["gin 40 %", 40],
    ["vodka 37.5 %", 37.5],
    ["rum 40 %", 40],
    ["liqueur 25 %", 25],
  ];
  const rows = poured.map(([name, strength], index) =>
    putRow(sheet, top + 2 + index, 0, [name, 5 * kit.random.whole(3, 16), strength]),
  );
  const pure = beside(kit, heads[3]!, columnOf(rows, 1), {
    ...{ sheet, format: "0.0" },
    content: (spot) =>
      `=${a1(spot)}*RIME.ABVTOMASSFRACTION(${a1({ ...spot, column: spot.column + 1 })})`,
  });
  rows.forEach(([, grams, abv], index) =>
    kit.marked.alcohols.push({ grams: grams!, abv: abv!, alcohol: pure[index]! }),
  );
  put(sheet, top + 6, 0, "week");
  sumOf(kit, sheet, { row: top + 6, column: 3 }, pure, "0.0");
  const words = "Contains alcohol: not for children, not in pregnancy, not before driving.";
  flags.push(put(sheet, top + 7, 0, words));
}
