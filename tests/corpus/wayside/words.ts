import type { Voice } from "../caterers/words";
import { put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, sumOf, type Place } from "../layouts/parts";
import { inUnit, type SheetUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";

export interface LineupPlan extends Place {
  readonly heads: readonly Content[];
  /** What stands in a line, from left to right; the amount in the sheet's unit. */
  readonly cells: (name: string, amount: Content, index: number) => readonly Content[];
  readonly name: number;
  readonly amount: number;
  /** Where the unit has cells of its own. */
  readonly unitAt?: number;
  readonly unit: SheetUnit;
  readonly format: string;
  readonly total?: { readonly label: string; readonly above?: true };
  /** Where formulas work the same lines out for another batch. */
  readonly also?: readonly Spot[];
}

export interface Lineup {
  readonly recipe: MarkedRecipe;
  readonly heads: readonly Spot[];
  readonly rows: readonly (readonly Spot[])[];
  /** The first row under everything. */
  readonly end: number;
}

/** A recipe's lines with their total under them, or over the headings. */
export function lineup(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, plan: LineupPlan): Lineup {
  const { column, unit, format, total } = plan;
  const top = plan.row + (total?.above ? 1 : 0);
  const heads = putRow(sheet, top, column, plan.heads);
  const rows = made.names.map((name, index) => {
    const amount = shown(inUnit(made.grams[index]!, unit), format);
    return putRow(sheet, top + 1 + index, column, plan.cells(name, amount, index));
  });
  const amounts = columnOf(rows, plan.amount);
  const under = top + 1 + rows.length;
  const sumRow = total?.above ? plan.row : under;
  const at = { row: sumRow, column: column + plan.amount };
  if (total !== undefined) put(sheet, sumRow, column + plan.name, total.label);
  const recipe = markRecipe(kit, made, {
    ...{ names: columnOf(rows, plan.name), amounts, amountLabel: heads[plan.amount]!, unit },
    alsoAmounts: plan.also ?? [],
    unitCells: plan.unitAt === undefined ? [] : columnOf(rows, plan.unitAt),
    total: total === undefined ? null : sumOf(kit, sheet, at, amounts, format),
  });
  return { recipe, heads, rows, end: total === undefined || total.above ? under : under + 1 };
}

/** A little table beside the rest: headings, then rows. */
export const little = (
  sheet: CorpusSheet,
  { row, column }: Place,
  heads: readonly Content[],
  rows: readonly (readonly Content[])[],
) => ({
  heads: putRow(sheet, row, column, heads),
  rows: rows.map((cells, index) => putRow(sheet, row + 1 + index, column, cells)),
});

/** A little table whose later columns are read off a thermometer. */
export function readings(
  kit: Kit,
  sheet: CorpusSheet,
  place: Place,
  heads: readonly string[],
  days: readonly string[],
  [from, to]: readonly [number, number],
): void {
  const half = () => shown(kit.random.whole(2 * from, 2 * to) / 2, "0.0");
  const made = little(
    sheet,
    place,
    heads,
    days.map((day) => [day, ...heads.slice(1).map(half)]),
  );
  made.heads.slice(1).forEach((heading, index) => {
    const spots = columnOf(made.rows, index + 1);
    kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
  });
}

/** Recipes that anybody may eat first; the one with a mistake in it before all others. */
export function mild(kit: Kit, count: number): MadeRecipe[] {
  const rank = ({ seeded, lines }: MadeRecipe): number => {
    if (seeded !== undefined) return 0;
    return lines.some(({ caution }) => caution !== undefined) ? 2 : 1;
  };
  return kit
    .make(6 * count)
    .sort((one, other) => rank(one) - rank(other))
    .slice(0, count);
}

export const PLAIN: Voice = {
  lead: "Has in it:",
  honey: "honey – no babies under 12 months.",
  alcohol: "alcohol – grown-ups only, not if pregnant or driving.",
  nuts: "whole nuts – under-fives may choke.",
  egg: "raw egg yolk – take the mix to 71 °C or use pasteurised.",
};

export const SCHLICHT: Voice = {
  lead: "Drin ist:",
  honey: "Honig, also nicht für Babys unter 12 Monaten!",
  alcohol: "Alkohol drin: nur Erwachsene, nicht schwanger, nicht am Steuer.",
  nuts: "ganze Nüsse: Kinder unter 5 können sich daran verschlucken.",
  egg: "Eigelb ist roh: auf 71 °C bringen oder pasteurisiert kaufen.",
};
