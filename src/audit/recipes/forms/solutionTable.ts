import type { FinderContext } from "../finderContext";
import type { Place } from "../recipeBlock";
import type { Form } from "./form";
import { gatherForms } from "./gatherForms";
import type { LabelledPair, LabelledValues } from "./labelledPairs";
import { lanesOf } from "./lanes";
import { keyOf, type ClassRole } from "./rolesByFormula";

/** A table with a solution to each row, and what is known of the sheet around it. */
export interface SolutionTable {
  readonly context: FinderContext;
  readonly columns: readonly LabelledPair[];
  /** What stands in a cell, by the cell. */
  readonly pairAt: ReadonlyMap<string, LabelledPair>;
  /** The worked example whose data a cell is one of. */
  readonly formAt: ReadonlyMap<string, Form>;
  /** The data that stand right above the table. */
  readonly formAbove: Form | undefined;
}

const ANSWERS: readonly (ClassRole | null)[] = ["molality", "depression", "freezing point"];
/** Data stand at most so many rows above their table. */
const REACH = 6;

export const isAnswerColumn = ({ role }: LabelledPair): boolean => ANSWERS.includes(role);

/** Columns side by side below headings in one row, answers among them. */
function runsOfColumns(columns: readonly LabelledPair[]): LabelledPair[][] {
  const tables: LabelledPair[][] = [];
  for (const column of columns) {
    const last = tables.at(-1);
    const before = last?.at(-1);
    if (before?.row === column.row && before.column === column.column - 1) last?.push(column);
    else tables.push([column]);
  }
  return tables.filter((table) => table.some(isAnswerColumn));
}

/** Pairs or forms by the cells of their values. */
const byCell = <T>(all: readonly T[], valuesOf: (one: T) => readonly Place[]): Map<string, T> =>
  new Map(all.flatMap((one) => valuesOf(one).map((value) => [keyOf(value), one] as const)));

/** Of the data whose labels stand in the rows above a table and over its columns the nearest. */
function formAbove(
  columns: readonly LabelledPair[],
  formsByRow: ReadonlyMap<number, readonly Form[]>,
): Form | undefined {
  const [left, right] = [columns[0]?.column ?? 0, columns.at(-1)?.column ?? 0];
  const top = columns[0]?.row ?? 0;
  const isOver = ({ pairs }: Form) =>
    pairs.every(({ row, column }) => row < top && column >= left - 1 && column <= right);
  const rows = Array.from({ length: REACH }, (_, at) => top - 1 - at);
  return rows.flatMap((row) => formsByRow.get(row) ?? []).find(isOver);
}

/** The tables of a sheet that give answers of a class in their columns. */
export function solutionTables(
  context: FinderContext,
  { pairs, columns }: LabelledValues,
): SolutionTable[] {
  const tables = runsOfColumns(columns);
  if (tables.length === 0) return [];
  const forms = lanesOf(context.sheet, pairs).flatMap((lane) => gatherForms(context, lane));
  const pairAt = byCell([...columns, ...pairs], ({ values }) => values);
  const formAt = byCell(forms, (form) => form.pairs.flatMap(({ values }) => values));
  const formsByRow = new Map<number, Form[]>();
  for (const form of forms) {
    const row = form.pairs.at(-1)?.row ?? -1;
    formsByRow.set(row, [...(formsByRow.get(row) ?? []), form]);
  }
  return tables.map((headed) => ({
    ...{ context, columns: headed, pairAt, formAt, formAbove: formAbove(headed, formsByRow) },
  }));
}
