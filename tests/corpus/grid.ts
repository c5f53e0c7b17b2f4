import { put, putRow, shown, span, type CorpusSheet, type Spot } from "./book";
import type { Kit } from "./kit";
import { inUnit, PER_GRAM, type SheetUnit } from "./list";
import type { MarkedRecipe } from "./marks";
import type { MadeRecipe } from "./recipes";
import { labelFor, resultAt, type ResultPlan } from "./results";

export interface GridPlan {
  readonly top: number;
  readonly left: number;
  /** Which way the recipes lie. */
  readonly recipesIn: "rows" | "columns";
  readonly unit: SheetUnit;
  /** In the corner, over or beside the names; it, or the sheet's title, names the unit. */
  readonly corner: string;
  readonly total?: string;
  readonly format?: string;
  readonly results?: readonly ResultPlan[];
  /** Where the sheet names the unit, when not in the corner. */
  readonly unitLabel?: Spot;
  /** Headings of what is said of each recipe after its results. */
  readonly allergens?: string;
  readonly target?: string;
}

interface Line {
  readonly kit: Kit;
  readonly sheet: CorpusSheet;
  readonly plan: GridPlan;
  readonly items: readonly string[];
  readonly heads: readonly Spot[];
  /** Writes for recipe `index` at a step along the items. */
  readonly cell: (step: number, content: Parameters<typeof put>[3]) => Spot;
  /** Writes beside the items, at the same step. */
  readonly side: (step: number, content: Parameters<typeof put>[3]) => Spot;
}

function totalOf({ kit, plan, side, cell, items }: Line, all: readonly Spot[]): Spot | null {
  if (plan.total === undefined) return null;
  side(items.length, plan.total);
  const spot = cell(items.length, `=SUM(${span(all)})`);
  kit.marked.sums.push({ spot, parts: all });
  return spot;
}

function recipeOf(line: Line, made: MadeRecipe, label: Spot): MarkedRecipe {
  const { plan, items, heads, cell } = line;
  const indices = made.names.map((name) => items.indexOf(name));
  const all = items.map((_, step) => cell(step, undefined));
  const amounts = made.grams.map((grams, index) => {
    const amount = inUnit(grams, plan.unit);
    return cell(indices[index]!, plan.format === undefined ? amount : shown(amount, plan.format));
  });
  return {
    ...{ made, amounts, amountLabel: plan.unitLabel ?? label, unit: plan.unit, unitCells: [] },
    ...{ names: indices.map((index) => heads[index]!), perGram: PER_GRAM[plan.unit], shared: true },
    ...{ results: [], targets: [], flags: [], alsoAmounts: [], total: totalOf(line, all) },
  };
}

function saidOf(line: Line, recipe: MarkedRecipe): void {
  const { kit, sheet, plan, items, heads, cell, side } = line;
  let step = items.length + (plan.total === undefined ? 0 : 1);
  const all = `${span(heads).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")},${span(items.map((_, index) => cellAt(cell, index)))}`;
  for (const each of plan.results ?? []) {
    const label = side(step, labelFor(each, kit.language));
    const { row, column } = cell(step, undefined);
    resultAt(sheet, recipe, label, { row, column }, each, () => all);
    step += 1;
  }
  const { made } = recipe;
  if (plan.allergens !== undefined) {
    side(step, plan.allergens);
    const which = (key: "allergen" | "caution") =>
      made.lines.flatMap((each) => each[key]?.[kit.language] ?? []);
    const words = [...new Set([...which("allergen"), ...which("caution")])].join("; ");
    if (words !== "" && made.flagged) recipe.flags.push(cell(step, words));
    step += 1;
  }
  if (plan.target !== undefined) {
    side(step, plan.target);
    if (made.target !== null) recipe.targets.push(cell(step, made.target));
  }
}

/** Where a step lies, its content left alone. */
const cellAt = (cell: Line["cell"], step: number): Spot => cell(step, KEEP);
const KEEP = { content: "\u0000keep" };

/** Several recipes that share the names along one side. */
export function grid(
  kit: Kit,
  sheet: CorpusSheet,
  mades: readonly MadeRecipe[],
  plan: GridPlan,
): MarkedRecipe[] {
  const { top, left, recipesIn, corner } = plan;
  const items = [...new Set(mades.flatMap(({ names }) => names))];
  const across = recipesIn === "rows";
  const place = (recipe: number, step: number, content: Parameters<typeof put>[3]): Spot => {
    const row = top + (across ? recipe : step);
    const column = left + (across ? step : recipe);
    return content === KEEP ? { sheet: sheet.name, row, column } : put(sheet, row, column, content);
  };
  const [, ...heads] = [corner, ...items].map((word, step) => place(0, step, word));
  const recipes = mades.map((made, index) => {
    const label = place(index + 1, 0, made.title);
    const line: Line = {
      ...{ kit, sheet, plan, items, heads },
      cell: (step, content) => place(index + 1, step + 1, content),
      side: (step, content) => place(0, step + 1, content),
    };
    const recipe = recipeOf(line, made, label);
    saidOf(line, recipe);
    return recipe;
  });
  kit.marked.recipes.push(...recipes);
  return recipes;
}

export { putRow };
