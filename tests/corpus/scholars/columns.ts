import { a1, fixed, put, shown, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { sumOf } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";

type Columns = (amounts: readonly Spot[], total: Spot) => readonly Spot[];

/** The share of each amount in all, in a column. */
export const shares =
  (kit: Kit, sheet: CorpusSheet, column: number, head: string): Columns =>
  (amounts, total) => {
    const heading = put(sheet, amounts[0]!.row - 1, column, head);
    const spots = beside(kit, heading, amounts, {
      ...{ sheet, format: "0.0", fixed: [total] },
      content: (spot) => `=${a1(spot)}/${fixed(total)}*100`,
    });
    sumOf(kit, sheet, { row: total.row, column }, spots, "0.0");
    return spots;
  };

const price = ({ random }: Kit, item: string): number =>
  item === "water" ? 0 : random.whole(90, 900) / 100;

/** What each amount costs by a price for the kilogram, in the third and fourth columns. */
export const costs =
  (kit: Kit, sheet: CorpusSheet, made: MadeRecipe, heads: readonly [string, string]): Columns =>
  (amounts, total) => {
    const [top, column] = [amounts[0]!.row - 1, 2];
    put(sheet, top, column, heads[0]);
    const heading = put(sheet, top, column + 1, heads[1]);
    amounts.forEach(({ row }, at) =>
      put(sheet, row, column, shown(price(kit, made.lines[at]!.en), "0.00")),
    );
    const spots = beside(kit, heading, amounts, {
      ...{ sheet, format: "0.00" },
      content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column })}`,
    });
    sumOf(kit, sheet, { row: total.row, column: column + 1 }, spots, "0.00");
    return [];
  };

/** The amounts for so many groups, whose number stands above. */
export const forGroups =
  (
    kit: Kit,
    sheet: CorpusSheet,
    column: number,
    words: Readonly<Record<"label" | "head", string>>,
  ): Columns =>
  (amounts, total) => {
    const top = amounts[0]!.row - 1;
    const { label, head } = words;
    const place = { row: top - 1, column: column - 1 };
    const value = kit.random.whole(3, 6);
    const groups = put(sheet, place.row, column, value);
    put(sheet, place.row, place.column, label);
    const heading = put(sheet, top, column, head);
    const spots = beside(kit, heading, amounts, {
      ...{ sheet, format: "0", fixed: [groups] },
      content: (spot) => `=${a1(spot)}*${fixed(groups)}`,
    });
    sumOf(kit, sheet, { row: total.row, column }, spots, "0");
    return spots;
  };

/** A freezer's temperature in a cell that formulas read. */
export function freezer(
  kit: Kit,
  sheet: CorpusSheet,
  place: { readonly row: number; readonly column: number },
  [label, bare]: readonly [string, string],
) {
  const temperatureC = -kit.random.whole(13, 19);
  const temperature = input(kit, sheet, place, { label, bare, value: temperatureC });
  return { temperature, temperatureC };
}
