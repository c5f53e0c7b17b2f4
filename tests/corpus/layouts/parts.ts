import { put, shown, span, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { PER_GRAM, type SheetUnit } from "../list";
import { trueValue, type MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { choose, dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";

export interface Place {
  readonly row: number;
  readonly column: number;
}

type Lines = Pick<MarkedRecipe, "names" | "amounts"> &
  Partial<Pick<MarkedRecipe, "alsoAmounts" | "unitCells" | "shared" | "total" | "amountLabel">> & {
    readonly unit: SheetUnit;
  };

/** Marks a recipe that was laid out by hand. */
export function markRecipe(kit: Kit, made: MadeRecipe, lines: Lines): MarkedRecipe {
  const recipe: MarkedRecipe = {
    ...{ made, results: [], targets: [], flags: [], alsoAmounts: [], unitCells: [] },
    ...{ shared: false, total: null, amountLabel: null, perGram: PER_GRAM[lines.unit] },
    ...lines,
  };
  kit.marked.recipes.push(recipe);
  return recipe;
}

/** A range whose every cell is fixed. */
export const absolute = (range: string): string => range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");

/** A sum over some cells beside each other. */
export function sumOf(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  parts: readonly Spot[],
  format?: string,
): Spot {
  const formula = `=SUM(${span(parts)})`;
  const spot = put(sheet, row, column, format === undefined ? formula : shown(formula, format));
  if (parts.length > 1) kit.marked.sums.push({ spot, parts });
  return spot;
}

export interface Said extends ResultPlan {
  readonly label: string;
  /** In a cell of its own, right of the number. */
  readonly inCell?: string;
}

/** Says something of a recipe, the label at the left; gives the next free row. */
export function say(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  list: readonly Said[],
): number {
  let next = row;
  for (const { label, inCell, ...plan } of list) {
    const labelSpot = { sheet: sheet.name, row: next, column };
    if (!resultAt(sheet, recipe, labelSpot, { row: next, column: column + 1 }, plan)) continue;
    put(sheet, next, column, label);
    if (inCell !== undefined) put(sheet, next, column + 2, inCell);
    next += 1;
  }
  return next;
}

export interface Problem {
  readonly solute: Dissolved;
  readonly waterGrams: number;
  readonly grams: number;
}

/** Solutions for a lesson, and how near the ideal law comes to all of them. */
export function problems(
  kit: Kit,
  count: number,
): { readonly list: readonly Problem[]; readonly tolerance: string } {
  const { random, language } = kit;
  const list = choose(random, count, dissolved).map((solute) => {
    const waterGrams = random.pick([150, 250, 300, 400, 800]);
    return { solute, waterGrams, grams: gramsOf(random, solute, waterGrams) };
  });
  const gaps = list.map((each) => idealGap([each.solute], [each.grams], each.waterGrams));
  const text = tolerated(Math.max(...gaps));
  return { list, tolerance: language === "de" ? text.replace(".", ",") : text };
}

/** Where a solution really begins to freeze, in tenths of a degree. */
export function freezesAt(names: readonly string[], grams: readonly number[]): number {
  return Number(trueValue({ names, grams }, "freezing point", null)!.toFixed(1));
}
