import { textAt } from "../cells";
import { chemicalName } from "../chemicalName";
import type { FinderContext } from "../finderContext";
import { headerRole } from "../headerRole";
import type { Place, RecipeBlock, RecipeName } from "../recipeBlock";
import { runs, type SheetTexts } from "../sheetTexts";
import type { Form, FormSolute } from "./form";
import { gatherForms } from "./gatherForms";
import { itemInLabel } from "./itemInLabel";
import { labelledPairs, nameAbove, type LabelledPair } from "./labelledPairs";

/** What tells a class's worked example from any other list of labelled numbers. */
const OF_CLASS = new Set(["molar mass", "moles", "particles", "molality", "cryoscopic constant"]);

const isOfClass = ({ pairs }: Form): boolean =>
  pairs.some(({ kind, label }) => kind !== "mass" && OF_CLASS.has(headerRole(label) ?? ""));

/** A pair's value in one of several solutions; one value alone holds for all. */
const valueIn = ({ values }: LabelledPair, column: number): Place | undefined =>
  values.length === 1 ? values[0] : values.find((value) => value.column === column);

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
  if (item !== null) return { row, column: mass.column, item };
  const above = nameAbove(context, { row, column }) ?? nameAbove(context, mass);
  const said = above === null ? null : textAt(context.sheet, above.row, above.column);
  const inTitle = said === null ? itemInLabel(label, context) : chemicalName(said, context.check);
  return above === null || inTitle === null ? null : { ...above, item: inTitle };
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

function blockIn(context: FinderContext, form: Form, column: number): RecipeBlock | null {
  const { sheet, ownIngredients } = context;
  const { water, solutes, pairs } = form;
  const poured = water === null ? undefined : valueIn(water, column);
  const weighed = solutes.filter(({ mass }) => mass !== null);
  const names = weighed.map((solute) => soluteIn(context, solute, column));
  const solved = names.filter((name) => name !== null);
  const [first] = solved;
  if (water === null || poured === undefined || first === undefined) return null;
  if (solved.length < names.length) return null;
  const { row, column: left, unit } = water;
  const inWater = { row, column: left, item: "water", amountAt: poured };
  const rows = pairs.flatMap((pair) => [pair.row, ...pair.values.map((value) => value.row)]);
  const columns = pairs.flatMap((pair) => [pair.column, ...pair.values.map((one) => one.column)]);
  return {
    ...{ sheet, ownIngredients, layout: "down", headerRow: null, totals: [], unitColumn: null },
    range: {
      ...{ top: Math.min(...rows), bottom: Math.max(...rows) },
      ...{ left: Math.min(...columns), right: Math.max(...columns) },
    },
    names: [...solved, { ...inWater, ...(unit !== null && { unit }) }],
    recipes: [{ title: first.item, line: column, unit: "g", unitAssumed: false }],
    roles: new Map(),
    answers: form.others.flatMap((pair) => {
      const place = pair.kind === "answer" ? valueIn(pair, column) : undefined;
      return place === undefined ? [] : [{ ...place, label: pair.label }];
    }),
  };
}

/** The columns of the solutions: those of the pair that has the most values. */
function columnsOf({ solutes, water }: Form): readonly number[] {
  const pairs = [...solutes.flatMap(({ named, mass }) => [named, mass]), water];
  const values = pairs.map((pair) => pair?.values ?? []);
  const most = values.reduce((one, other) => (other.length > one.length ? other : one), []);
  return most.map(({ column }) => column);
}

const isComplete = (form: Form): boolean =>
  form.water !== null && form.solutes.length > 0 && !form.isOtherSolvent && isOfClass(form);

function blocksIn(context: FinderContext, pairs: readonly LabelledPair[]): RecipeBlock[] {
  return gatherForms(context, pairs)
    .filter(isComplete)
    .flatMap((form) => columnsOf(form).flatMap((column) => blockIn(context, form, column) ?? []));
}

/** Labels in one column, with at most two blank rows between them. */
const lanesOf = (pairs: readonly LabelledPair[]): LabelledPair[][] => {
  const beside = pairs.filter(({ isBelow }) => !isBelow);
  const columns = [...new Set(beside.map(({ column }) => column))];
  return columns.flatMap((column) => {
    const lane = beside.filter((pair) => pair.column === column);
    return runs(
      lane.map(({ row }) => row),
      4,
    ).map((rows) => lane.filter(({ row }) => rows.includes(row)));
  });
};

/**
 * Worked examples of a class: labels with values beside or below them that name a substance, its mass and its
 * water, and work with moles. First column by column, then the rest of the sheet as it is read.
 */
export function solutionForms(context: FinderContext, texts: SheetTexts): RecipeBlock[] {
  const isOfMoles = [...texts.columnsByRow].some(([row, columns]) =>
    columns.some((column) => OF_CLASS.has(headerRole(textAt(context.sheet, row, column)) ?? "")),
  );
  if (!isOfMoles) return [];
  const pairs = labelledPairs(context, texts);
  const found = lanesOf(pairs).flatMap((lane) => blocksIn(context, lane));
  const isTaken = ({ row, column }: LabelledPair) =>
    found.some(
      ({ range: { top, bottom, left, right } }) =>
        row >= top && row <= bottom && column >= left && column <= right,
    );
  const others = pairs.filter((pair) => !isTaken(pair));
  return [...found, ...blocksIn(context, others)];
}
