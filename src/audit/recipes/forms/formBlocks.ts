import type { CellRange } from "../../../workbook/model";
import { textAt } from "../cells";
import { chemicalName } from "../names/chemicalName";
import type { FinderContext } from "../finderContext";
import { headerRole } from "../headings/headerRole";
import type { Place, RecipeBlock, RecipeName } from "../recipeBlock";
import type { Form, FormSolute } from "./form";
import { isWater } from "./isWater";
import { itemInLabel } from "./itemInLabel";
import type { LabelledPair } from "./labelledPairs";
import { nameAbove } from "./nameAbove";
import { saysAnyOfKind } from "./saysAnyOfKind";
import { pureSolute } from "../../solutions/pureSolute";
import { answerOf } from "./answerOf";
import { valueIn } from "./valueIn";

/** Of which kind "Sugar (g)" is in the column below "fruit sugar"; null where no heading says it. */
function kindAt(
  { sheet, check, ownIngredients }: FinderContext,
  label: string,
  heading: Place | null,
): (Place & { item: string }) | null {
  if (heading === null || !saysAnyOfKind(label)) return null;
  const item = chemicalName(textAt(sheet, heading.row, heading.column), check);
  const isKind = item !== null && pureSolute(item, ownIngredients) !== null;
  return isKind ? { ...heading, item } : null;
}

function nameOf(
  context: FinderContext,
  { named, item, mass }: FormSolute,
  column: number,
): (Place & { item: string }) | null {
  if (mass === null) return null;
  const at = named === null ? undefined : valueIn(named, column);
  if (at !== undefined) {
    const known = chemicalName(textAt(context.sheet, at.row, at.column), context.check);
    return known === null ? null : { ...at, item: known };
  }
  if (named !== null) return null;
  const { row, label } = mass;
  const heading = nameAbove(context, { row, column });
  if (item !== null) return kindAt(context, label, heading) ?? { row, column: mass.column, item };
  const above = heading ?? nameAbove(context, mass);
  const said = above === null ? null : textAt(context.sheet, above.row, above.column);
  const inTitle = said === null ? itemInLabel(label, context) : chemicalName(said, context.check);
  if (above === null || inTitle === null || isWater(inTitle)) return null;
  return { ...above, item: inTitle };
}

function soluteIn(context: FinderContext, solute: FormSolute, column: number): RecipeName | null {
  const name = nameOf(context, solute, column);
  const { mass } = solute;
  const amountAt = mass === null ? undefined : valueIn(mass, column);
  if (name === null || mass === null || amountAt === undefined) return null;
  const details = new Map(
    [...solute.details].flatMap(([role, pair]) => {
      const place = valueIn(pair, column);
      return place === undefined ? [] : [[role, { ...place, label: pair.label }] as const];
    }),
  );
  return { ...name, amountAt, details, ...(mass.unit !== null && { unit: mass.unit }) };
}

function rangeOf(pairs: readonly LabelledPair[]): CellRange {
  const rows = pairs.flatMap((pair) => [pair.row, ...pair.values.map((value) => value.row)]);
  const columns = pairs.flatMap((pair) => [pair.column, ...pair.values.map((one) => one.column)]);
  return {
    ...{ top: Math.min(...rows), bottom: Math.max(...rows) },
    ...{ left: Math.min(...columns), right: Math.max(...columns) },
  };
}

/** A worked example's solution as a recipe: what its columns hold is dissolved in one water. */
function blockIn(
  context: FinderContext,
  form: Form,
  columns: readonly number[],
): RecipeBlock | null {
  const [column = 0] = columns;
  const { sheet, ownIngredients } = context;
  const { water, solutes, pairs } = form;
  const poured = water === null ? undefined : valueIn(water, column);
  const weighed = solutes.filter(({ mass }) => mass !== null);
  const names = columns.flatMap((each) => weighed.map((solute) => soluteIn(context, solute, each)));
  const solved = names.filter((name) => name !== null);
  const [first] = solved;
  if (water === null || poured === undefined || first === undefined) return null;
  if (solved.length < names.length) return null;
  const { row, column: left, unit } = water;
  const inWater = { row, column: left, item: "water", amountAt: poured };
  return {
    ...{ sheet, ownIngredients, layout: "down", headerRow: null, totals: [], unitColumn: null },
    range: rangeOf(pairs),
    names: [...solved, { ...inWater, ...(unit !== null && { unit }) }],
    recipes: [{ title: first.item, line: column, unit: "g", unitAssumed: false }],
    roles: new Map(),
    answers: form.others.flatMap((pair) => {
      const place = pair.kind === "answer" ? valueIn(pair, column) : undefined;
      return place === undefined ? [] : [answerOf(pair, place)];
    }),
  };
}

/** The columns of the solutions: those of several names, else those of the pair that has the most values. */
function columnsOf({ solutes, water }: Form): readonly number[] {
  const names = solutes.flatMap(({ named }) => named?.values ?? []);
  if (names.length > 1) return [...new Set(names.map(({ column }) => column))];
  const pairs = [...solutes.flatMap(({ named, mass }) => [named, mass]), water];
  const values = pairs.map((pair) => pair?.values ?? []);
  const most = values.reduce((one, other) => (other.length > one.length ? other : one), []);
  return most.map(({ column }) => column);
}

const OF_MIX = new Set(["depression", "freezing point"]);

/** Whether all that is weighed goes into one water: there is one of it and one freezing point, of several masses. */
function isOnePan({ solutes, water, others }: Form): boolean {
  const answers = others.filter(({ label }) => OF_MIX.has(headerRole(label) ?? ""));
  return (
    water?.values.length === 1 &&
    solutes.some(({ mass }) => mass !== null && mass.values.length > 1) &&
    answers.length > 0 &&
    answers.every(({ values }) => values.length === 1)
  );
}

/** The solutions of a worked example: one, or one in each column. */
export function formBlocks(context: FinderContext, form: Form): RecipeBlock[] {
  const columns = columnsOf(form);
  const solutions = isOnePan(form) ? [columns] : columns.map((column) => [column]);
  return solutions.flatMap((each) => blockIn(context, form, each) ?? []);
}
