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

/** Rows of a column that are asked what it is worked out from. */
const SAMPLES = 5;

/** What an answer is worked out from; of a typed one, what the formulas of its column are in other rows. */
function sourcesIn(
  { context, pairAt, columns }: SolutionTable,
  column: LabelledPair,
  place: Place,
): Sources | null {
  const own = sourcesOf(context.sheet, pairAt, place);
  if (own === null || own.has("mass") || own.has("molar mass")) return own;
  const others = column.values.slice(0, SAMPLES).map((value) => ({
    row: value.row,
    sources: sourcesOf(context.sheet, pairAt, value),
  }));
  const like = others.find(({ sources }) => sources?.has("mass"));
  const isInTable = (at: Place) => columns.some((one) => one.column === at.column);
  const moved = [...(like?.sources ?? [])].map(([role, at]): [ClassRole, Place] => [
    role,
    at.row === like?.row && isInTable(at) ? { ...at, row: place.row } : at,
  ]);
  return new Map([...moved, ...own]);
}

function withUnread(table: SolutionTable, solution: SolutionInRow): SolutionInRow {
  const sources: Sources = new Map(solution.sources);
  for (const role of ["mass", "water", "molar mass", "moles", "particles"] as const) {
    const place = sources.has(role) ? undefined : placeOf(table, solution, role);
    if (place !== undefined) sources.set(role, place);
  }
  return { ...solution, sources };
}

/** The solutions of a row: answers that come from the same mass of the same substance are of one. */
export function solutionsInRow(table: SolutionTable, row: number): SolutionInRow[] {
  const { columns } = table;
  const found = new Map<string, { sources: Sources; answers: LabelledPair[] }>();
  for (const column of columns) {
    const place = isAnswerColumn(column) ? valueInRow(column, row) : undefined;
    const sources = place === undefined ? null : sourcesIn(table, column, place);
    if (sources === null) continue;
    const of = (["mass", "molar mass"] as const).map((role) => sources.get(role));
    const key = of.map((one) => (one === undefined ? "" : keyOf(one))).join(" ");
    const known = found.get(key);
    if (known === undefined) found.set(key, { sources, answers: [column] });
    else known.answers.push(column);
  }
  return [...found.values()].map(({ sources, answers }) =>
    withUnread(table, { row, sources, answers, form: formOf(table, sources) }),
  );
}
