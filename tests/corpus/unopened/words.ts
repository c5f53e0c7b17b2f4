import { put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import type { Kit } from "../kit";
import { sumOf, type Place } from "../layouts/parts";
import type { MarkedSolution } from "../marks";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import type { StockLine } from "../stock";

/** A cook's way of saying it in German. */
export const DEUTSCH: Voice = {
  lead: "Allergene laut Kennzeichnung:",
  honey: "Honig ist nichts für Kinder unter 12 Monaten.",
  alcohol: "Alkohol enthalten: nicht für Kinder, Schwangere oder wer noch fährt.",
  nuts: "Ganze Nüsse, Erstickungsgefahr: nicht für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb: Masse auf 71 °C erhitzen oder pasteurisiertes Eigelb nehmen.",
};

/** A cook's way of saying it in English. */
export const ENGLISH: Voice = {
  lead: "Allergens on the card:",
  honey: "Has honey: not for children under 12 months.",
  alcohol: "Alcohol in this one: no children, no expectant mothers, no drivers.",
  nuts: "Whole nuts are a choking hazard, not for children under 5.",
  egg: "Raw egg yolk: take the mix to 71 °C or use pasteurised yolk.",
};

interface Readings {
  /** The first is over what is written at the left; the others are over temperatures. */
  readonly heads: readonly [string, ...string[]];
  readonly lines: readonly (string | number)[];
  /** The coldest and the warmest of each column, in halves of a degree. */
  readonly from: readonly (readonly [coldest: number, warmest: number])[];
}

/** Temperatures that somebody wrote down; gives the next free row. */
export function thermometer(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  { heads, lines, from }: Readings,
): number {
  const spots = putRow(sheet, row, column, heads);
  lines.forEach((line, index) => put(sheet, row + 1 + index, column, line));
  from.forEach(([coldest, warmest], at) => {
    const read = lines.map((_, index) => {
      const halves = kit.random.whole(2 * coldest, 2 * warmest);
      return put(sheet, row + 1 + index, column + 1 + at, shown(halves / 2, "0.0"));
    });
    temperatures(kit, spots[1 + at]!, read);
  });
  return row + 1 + lines.length;
}

/** One dissolved thing with cells of its own. */
export const single = (
  cells: Readonly<Record<"name" | "grams" | "molar" | "particles" | "moles", Spot>>,
  rest: Pick<MarkedSolution, "water" | "constant" | "depression" | "freezingPoint" | "proviso">,
): MarkedSolution => ({
  ...{ names: [cells.name], grams: [cells.grams], molarMasses: [cells.molar] },
  ...{ particles: [cells.particles], moles: [cells.moles] },
  ...rest,
});

/** Whether a line can be poured. */
export const isWet = ({ en }: StockLine): boolean =>
  /water|juice|milk$|cream|coffee|vodka|yogurt|puree|syrup|honey/.test(en);

/** Where a line is fetched from: the tap, somewhere cold, the bar, or a shelf. */
export function fetchedFrom(
  { en }: StockLine,
  [tap, cold, bar, dry]: readonly [tap: string, cold: string, bar: string, dry: string],
): string {
  if (en === "water") return tap;
  if (/vodka/.test(en)) return bar;
  const isDry = /sugar|sucrose|fructose|dextrose|glucose|powder|salt|inulin|acid|desiccated/.test(
    en,
  );
  return isDry || /nuts|pistachios|honey|coconut/.test(en) ? dry : cold;
}

/** Shares of a whole, typed as per cents under a heading, and their sum; gives the next free row. */
export function shares(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  plan: {
    readonly heads: readonly [string, string];
    readonly parts: readonly string[];
    readonly total: string;
  },
): number {
  const { heads, parts, total } = plan;
  const heading = putRow(sheet, row, column, heads)[1]!;
  const numbers = parts.slice(1).map(() => kit.random.whole(9, Math.floor(85 / parts.length)));
  const first = 100 - numbers.reduce((sum, each) => sum + each, 0);
  const spots = parts.map((part, index) => {
    const number = [first, ...numbers][index]!;
    return putRow(sheet, row + 1 + index, column, [part, number])[1]!;
  });
  const end = row + 1 + parts.length;
  put(sheet, end, column, total);
  const sum = sumOf(kit, sheet, { row: end, column: column + 1 }, spots);
  kit.marked.numberColumns.push({ spots, heading, total: sum, kind: "per cent" });
  return end + 1;
}

/** What each thing in some recipes costs a kilogram, the same wherever it is used. */
export function pricesOf(kit: Kit, mades: readonly MadeRecipe[]): ReadonlyMap<string, number> {
  const prices = new Map<string, number>();
  for (const { names, lines } of mades)
    names.forEach((name, index) => {
      if (!prices.has(name)) prices.set(name, usualPrice(kit.random, lines[index]!.en));
    });
  return prices;
}
