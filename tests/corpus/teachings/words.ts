import { put, putRow, type Content, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, sumOf, type Place } from "../layouts/parts";
import type { SheetUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed, type Listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";

/** How somebody tells what is in it: a lead, then honey, alcohol, whole nuts and raw yolk. */
export const voice = (
  lead: string,
  honey: string,
  alcohol: string,
  nuts: string,
  egg: string,
): Voice => ({ lead, honey, alcohol, nuts, egg });

/** Rows of cells from a place; gives the cells. */
export const table = (
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: readonly (readonly Content[])[],
): Spot[][] => rows.map((cells, index) => putRow(sheet, row + index, column, cells));

export interface BlockPlan {
  readonly heads: readonly Content[];
  readonly cells: (name: string, grams: number, index: number) => readonly Content[];
  /** Which of the cells hold the name, the amount and, perhaps, its unit. */
  readonly name: number;
  readonly amount: number;
  readonly unitAt?: number;
  readonly unit: SheetUnit;
  readonly format?: string;
  /** What stands beside the sum, left of the amounts or where the names are; no sum without. */
  readonly word?: string;
  /** The sum stands over the headings instead of under the lines. */
  readonly isOver?: true;
  /** Writes columns beside the amounts; gives those that are amounts, too. */
  readonly also?: (list: Listed, total: Spot | null) => readonly Spot[];
}

export interface Block extends Listed {
  readonly recipe: MarkedRecipe;
  readonly total: Spot | null;
}

function summed(kit: Kit, list: Listed, { row, column }: Place, plan: BlockPlan): Spot | null {
  if (plan.word === undefined) return null;
  const at = plan.isOver ? row - 1 : list.end;
  put(list.sheet, at, column + plan.name, plan.word);
  const amount = { row: at, column: column + plan.amount };
  return sumOf(kit, list.sheet, amount, list.amounts, plan.format);
}

/** A recipe's lines with their sum, marked. */
export function block(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  place: Place,
  plan: BlockPlan,
): Block {
  const list = listed(sheet, made, place, plan);
  const { names, amounts, heads, rows } = list;
  const total = summed(kit, list, place, plan);
  const alsoAmounts = plan.also?.(list, total) ?? [];
  const unitCells = plan.unitAt === undefined ? [] : columnOf(rows, plan.unitAt);
  const cells = { names, amounts, alsoAmounts, unitCells, unit: plan.unit, total };
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[plan.amount]! });
  return { ...list, recipe, total };
}

/** A solution worked out by hand, its cells wherever they stand. */
export interface Worked {
  readonly name: Spot;
  readonly mass: Spot;
  readonly molar: Spot;
  readonly particles: Spot;
  readonly water: Spot;
  readonly constant: Spot;
  readonly moles: Spot;
  readonly depression: Spot;
  readonly point: Spot | null;
}

/** Marks such a solution of one substance. */
export function markWorked({ marked }: Kit, worked: Worked, proviso: Spot): void {
  const { name, mass, molar, particles, water, constant, moles, depression, point } = worked;
  marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint: point, proviso },
  });
}

/** A column of formulas under, or beside, its heading. */
export const markFormulas = (
  { marked }: Kit,
  heading: Spot,
  spots: readonly Spot[],
  fixed: readonly Spot[] = [],
): void => {
  marked.formulaColumns.push({ spots, heading, fixed });
};
