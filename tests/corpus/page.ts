import { put, putRow, shown, type CorpusSheet, type Spot } from "./book";
import { nameTarget, note, tell, type Kit } from "./kit";
import { List, type ListPlan } from "./list";
import type { MadeRecipe } from "./recipes";
import { results, type ResultPlan } from "./results";

/** How a page with one recipe on it is laid out. */
export interface PagePlan {
  readonly top?: number;
  readonly left?: number;
  /** Rows between the title and the headings; no title without. */
  readonly titleGap?: number;
  readonly list: Omit<ListPlan, "top" | "left">;
  readonly results?: {
    readonly place: "below" | "right" | "above";
    readonly plans: readonly ResultPlan[];
    readonly unitCell?: boolean;
    readonly gap?: number;
  };
  readonly tell?: "sentence" | "pair";
  /** The label of the serving target. */
  readonly target?: string;
  readonly note?: string;
  /** The label of a cell with the serving temperature, and the label without its unit. */
  readonly serving?: readonly [label: string, bare: string];
}

const SERVED = [-10, -12, -14, -18];

function servingCell(
  kit: Kit,
  sheet: CorpusSheet,
  row: number,
  column: number,
  words: readonly string[],
) {
  const [label, bare] = words;
  const temperatureC = kit.random.pick(SERVED);
  const [labelSpot, value] = putRow(sheet, row, column, [label, temperatureC]);
  kit.marked.inputs.push({ label: labelSpot!, value: value!, bare: bare! });
  return { temperature: value!, temperatureC };
}

const placed = (
  plans: readonly ResultPlan[],
  serving: { temperature: Spot; temperatureC: number } | null,
): ResultPlan[] =>
  plans.flatMap((plan) => {
    if (!plan.states.startsWith("ice") || plan.temperatureC !== undefined) return [plan];
    return serving === null ? [] : [{ ...plan, ...serving }];
  });

/** One recipe on a page, with what it says of it; gives the next free row. */
export function page(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, plan: PagePlan): number {
  const { top = 0, left = 0, titleGap, list, tell: as } = plan;
  const { language } = kit;
  let row = top;
  if (titleGap !== undefined) {
    put(sheet, row, left, made.title);
    row += 1 + titleGap;
  }
  const serving =
    plan.serving === undefined ? null : servingCell(kit, sheet, row++, left, plan.serving);
  const plans = placed(plan.results?.plans ?? [], serving);
  const unitCell = plan.results?.unitCell ?? false;
  if (plan.results?.place === "above") row += plans.length + 1;
  const { recipe, totalRow } = new List(kit, sheet, made, { ...list, top: row, left });
  const place = plan.results?.place;
  const right = left + list.columns.length + 1;
  if (place === "above") {
    const at = row - plans.length - 1;
    results(sheet, recipe, { row: at, column: left, language, plans, unitCell });
  }
  let next = totalRow + (list.total === undefined ? 1 : 2);
  if (place === "below") {
    const at = next + (plan.results?.gap ?? 0);
    next = results(sheet, recipe, { row: at, column: left, language, plans, unitCell });
  }
  if (place === "right") {
    results(sheet, recipe, { row: row + 1, column: right, language, plans, unitCell });
  }
  if (plan.target !== undefined) {
    nameTarget(sheet, recipe, { row: next++, column: left, label: plan.target });
  }
  if (as !== undefined) next = tell(kit, sheet, recipe, { row: next + 1, column: left, as });
  if (plan.note !== undefined) note(kit, sheet, ++next, left, plan.note);
  return next + 2;
}

/** A labelled number that formulas read. */
export function input(
  kit: Kit,
  sheet: CorpusSheet,
  place: { readonly row: number; readonly column: number },
  words: {
    readonly label: string;
    readonly bare: string;
    readonly value: number;
    readonly format?: string;
  },
): Spot {
  const label = put(sheet, place.row, place.column, words.label);
  const content = words.format === undefined ? words.value : shown(words.value, words.format);
  const value = put(sheet, place.row, place.column + 1, content);
  kit.marked.inputs.push({ label, value, bare: words.bare });
  return value;
}
