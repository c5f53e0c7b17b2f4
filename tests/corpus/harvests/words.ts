import { a1, putRow, shown, span, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { absolute, sumOf, type Place } from "../layouts/parts";
import type { NumberColumn } from "../marks";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { usualPrice } from "../unseen/shared";

/** What a kilogram of each line costs. */
export const pricesOf = ({ random }: Kit, made: MadeRecipe): number[] =>
  made.lines.map(({ en }) => usualPrice(random, en));

/** Numbers under a heading, marked as a column of their kind. */
export function numbersUnder(
  kit: Kit,
  heading: Spot,
  spots: readonly Spot[],
  kind: NumberColumn["kind"],
  total: Spot | null = null,
): void {
  kit.marked.numberColumns.push({ spots, heading, total, kind });
}

/** A label with a formula, or a number, at its right. */
export const labelled = (
  sheet: CorpusSheet,
  { row, column }: Place,
  label: string,
  content: number | string,
  format = "0.00",
): Spot => putRow(sheet, row, column, [label, shown(content, format)])[1]!;

/** A small table: headings, then its rows; gives the cells of each row. */
export function table(
  sheet: CorpusSheet,
  { row, column }: Place,
  heads: readonly Content[],
  rows: readonly (readonly Content[])[],
): { readonly heads: readonly Spot[]; readonly columns: readonly (readonly Spot[])[] } {
  const headings = putRow(sheet, row, column, heads);
  const cells = rows.map((line, index) => putRow(sheet, row + 1 + index, column, line));
  return { heads: headings, columns: headings.map((_, at) => cells.map((line) => line[at]!)) };
}

/** Temperatures that somebody read and wrote down, whole or half degrees. */
export const readings = (
  { random }: Kit,
  count: number,
  [from, to]: readonly [number, number],
): Content[] =>
  Array.from({ length: count }, () => shown(random.whole(2 * from, 2 * to) / 2, "0.0"));

/** What each amount costs by the price in another column of its row, and the sum under them. */
export function costsUnder(
  kit: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  amounts: readonly Spot[],
  plan: { readonly price: number; readonly per?: string; readonly totalRow: number },
): { readonly costs: readonly Spot[]; readonly total: Spot } {
  const costs = beside(kit, heading, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: plan.price })}${plan.per ?? ""}`,
  });
  const place = { row: plan.totalRow, column: heading.column };
  return { costs, total: sumOf(kit, sheet, place, costs, "0.00") };
}

export interface Goods {
  readonly name: string;
  readonly en: string;
}

/** What some recipes are made from, each once. */
export function goodsOf(mades: readonly MadeRecipe[]): Goods[] {
  const all = mades.flatMap(({ names, lines }) =>
    names.map((name, index) => ({ name, en: lines[index]!.en })),
  );
  return all.filter(({ name }, index) => all.findIndex((each) => each.name === name) === index);
}

/** A price list: what, the pack in kg, what the pack costs, and from that a kilogram. */
export function priceList(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  heads: readonly string[],
  goods: readonly Goods[],
): { readonly lookup: string; readonly end: number } {
  const rows = goods.map(({ name, en }) => {
    const size = kit.random.pick([0.5, 1, 2.5, 5, 10]);
    const price = Math.max(0.01, Number((usualPrice(kit.random, en) * size).toFixed(2)));
    return [name, size, shown(price, "0.00")];
  });
  const { heads: headings, columns } = table(sheet, { row, column }, heads, rows);
  beside(kit, headings[3]!, columns[2]!, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/${a1({ ...spot, column: spot.column - 1 })}`,
  });
  const last = { ...columns[0]!.at(-1)!, column: column + 3 };
  const lookup = `'${sheet.name}'!${absolute(span([columns[0]![0]!, last]))}`;
  return { lookup, end: last.row + 1 };
}
