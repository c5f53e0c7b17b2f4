import type { Place } from "../recipeBlock";
import type { Form } from "./form";
import type { LabelledPair } from "./labelledPairs";
import { keyOf, type ClassRole } from "./rolesByFormula";
import { isAnswerColumn, type SolutionTable } from "./solutionTable";
import { sourcesOf, type Sources } from "./sourcesOf";
import { valueIn } from "./valueIn";

/** One solution in a row of a table. */
export interface SolutionInRow {
  readonly row: number;
  readonly answers: readonly LabelledPair[];
  /** What its answers are worked out from, read by their formulas or standing with them. */
  readonly sources: Sources;
  /** The labelled data that it works with. */
  readonly form: Form | undefined;
}

/** A column's value in a row; its values stand below each other without a gap. */
export const valueInRow = ({ values }: LabelledPair, row: number): Place | undefined =>
  values[row - (values[0]?.row ?? 0)];

/** The data that the formulas of a row read, else those above the table. */
function formOf({ formAt, formAbove }: SolutionTable, sources: Sources): Form | undefined {
  const read = (["molar mass", "particles", "water"] as const).flatMap((role) => {
    const place = sources.get(role);
    return place === undefined ? [] : (formAt.get(keyOf(place)) ?? []);
  });
  return read[0] ?? formAbove;
}

/** The only place of a role in the row or, if it is none that changes from row to row, among the data. */
function placeOf(
  { columns }: SolutionTable,
  { row, sources, form }: SolutionInRow,
  role: ClassRole,
): Place | undefined {
  const [inRow, ...more] = columns.filter((column) => column.role === role);
  if (inRow !== undefined) return more.length === 0 ? valueInRow(inRow, row) : undefined;
  const [given, ...others] = (form?.pairs ?? []).filter((pair) => pair.role === role);
  const beside = sources.get("molar mass") ?? sources.get("particles") ?? sources.get("water");
  return given === undefined || others.length > 0 || role === "moles"
    ? undefined
    : valueIn(given, beside?.column ?? -1);
}

const isAt = (one: Place | undefined, other: Place | undefined): boolean =>
  one === other || (one !== undefined && other !== undefined && keyOf(one) === keyOf(other));

/** Rows of a column that are asked what it is worked out from. */
const SAMPLES = 5;

interface OfRow {
  readonly row: number;
  readonly sources: Sources;
}

/** What a row is worked out from, as others of its column are: from what stands in their row, or from one place. */
function sourcesLike(others: readonly OfRow[], row: number): Sources {
  const like = others.find((one) => one.sources.get("mass")?.row === one.row) ?? others[0];
  const isMost = (test: (one: OfRow) => boolean) => 2 * others.filter(test).length > others.length;
  const moved = [...(like?.sources ?? [])].flatMap(([role, at]): [ClassRole, Place][] => {
    if (isMost((one) => one.sources.get(role)?.row === one.row)) return [[role, { ...at, row }]];
    return isMost(({ sources }) => isAt(sources.get(role), at)) ? [[role, at]] : [];
  });
  return new Map(moved);
}

/** What an answer is worked out from; of a typed one, what the formulas of its column are in other rows. */
function sourcesIn(
  { context, pairAt }: SolutionTable,
  column: LabelledPair,
  place: Place,
): Sources | null {
  const own = sourcesOf(context.sheet, pairAt, place);
  const mass = own?.get("mass");
  // A reference that slipped into another row says nothing of this row's solution.
  const hasSlipped =
    mass !== undefined &&
    mass.row !== place.row &&
    pairAt.get(keyOf(mass))?.values.some(({ row }) => row === place.row) === true;
  if (own === null || (!hasSlipped && (mass !== undefined || own.has("molar mass")))) return own;
  const others = column.values.slice(0, SAMPLES).flatMap((value) => {
    const sources = sourcesOf(context.sheet, pairAt, value);
    return sources?.has("mass") === true ? [{ row: value.row, sources }] : [];
  });
  return new Map([...sourcesLike(others, place.row), ...(hasSlipped ? [] : own)]);
}

function withUnread(table: SolutionTable, solution: SolutionInRow): SolutionInRow {
  const sources: Sources = new Map(solution.sources);
  for (const role of ["mass", "water", "molar mass", "moles", "particles"] as const) {
    const place = sources.has(role) ? undefined : placeOf(table, solution, role);
    if (place !== undefined) sources.set(role, place);
  }
  return { ...solution, sources };
}

/** Whether answers come from the same mass of the same substance; a typed one may not tell its substance. */
function isOfOne(one: Sources, other: Sources): boolean {
  const [mass, theirs] = [one.get("molar mass"), other.get("molar mass")];
  const isUntold = one.has("mass") && (mass === undefined || theirs === undefined);
  return isAt(one.get("mass"), other.get("mass")) && (isUntold || isAt(mass, theirs));
}

/** The solutions of a row: answers that come from the same mass of the same substance are of one. */
export function solutionsInRow(table: SolutionTable, row: number): SolutionInRow[] {
  const { columns } = table;
  const found: { sources: Sources; answers: LabelledPair[] }[] = [];
  for (const column of columns) {
    const place = isAnswerColumn(column) ? valueInRow(column, row) : undefined;
    const sources = place === undefined ? null : sourcesIn(table, column, place);
    if (sources === null) continue;
    const known = found.find((one) => isOfOne(one.sources, sources));
    if (known === undefined) found.push({ sources, answers: [column] });
    else {
      known.answers.push(column);
      known.sources = new Map([...sources, ...known.sources]);
    }
  }
  return found.map(({ sources, answers }) =>
    withUnread(table, { row, sources, answers, form: formOf(table, sources) }),
  );
}
