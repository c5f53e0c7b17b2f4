import { bareShare } from "../../answers/bareShare";
import { holdsNumber, isBlank, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import { countsAcross } from "../amounts/countsAcross";
import { derivedAcross } from "../amounts/derivedAcross";
import { beyondAnswers } from "../names/beyondAnswers";
import { beyondTotals } from "../names/beyondTotals";
import { headerRole, type Role } from "./headerRole";
import { itemName } from "../names/namesAcross";
import { namesInDisguise, type Headers } from "../names/namesInDisguise";
import { ratiosAcross } from "../names/ratiosAcross";
import type { RecipeName } from "../recipeBlock";
import { statedShares } from "../names/statedShares";
import { sumsAcross } from "../totals/sumsAcross";

/** The first rows below the headings, down to one that has nothing but words: it is about something else. */
function firstRows({ sheet }: FinderContext, first: number, columns: readonly number[]): number[] {
  const rows = [first, first + 1, first + 2, first + 3];
  const isOfWords = (row: number) =>
    !columns.some((column) => holdsNumber(sheet, row, column)) &&
    columns.filter((column) => textAt(sheet, row, column) !== "").length >= 2;
  const end = rows.findIndex((row) => row > first && isOfWords(row));
  return end < 0 ? rows : rows.slice(0, end);
}

/** Whether a word with nothing left of it in the table is the label of the number right of it: "loaded" before a sum. */
function isLabelOfNext({ sheet }: FinderContext, row: number, before: readonly number[]): boolean {
  const at = before.at(-1) ?? 0;
  return (
    before.length > 1 &&
    before.slice(0, -1).every((column) => isBlank(sheet, row, column)) &&
    holdsNumber(sheet, row, at + 1)
  );
}

/** Whether the first rows of a column, the last of these, hold numbers, blanks or errors rather than words. */
function holdsAmounts(
  context: FinderContext,
  rows: readonly number[],
  upTo: readonly number[],
): boolean {
  const { sheet } = context;
  const column = upTo.at(-1) ?? 0;
  const numbers = rows.filter((row) => holdsNumber(sheet, row, column));
  const words = rows.filter(
    (row) =>
      textAt(sheet, row, column) !== "" &&
      !numbers.includes(row) &&
      !isLabelOfNext(context, row, upTo),
  );
  return words.length === 0 || words.length < numbers.length;
}

/** Trials and batches are numbered one after the other. */
function isNumbering({ sheet }: FinderContext, first: number, column: number): boolean {
  const values = [0, 1, 2].map((step) => {
    const value = sheet.cellAt(first + step, column)?.value;
    // Numbers of trials are typed as texts, too.
    return typeof value === "string" && /^\d+$/.test(value) ? Number(value) : value;
  });
  const [start, ...next] = values;
  return (
    typeof start === "number" &&
    Number.isInteger(start) &&
    next.every((value, at) => value === undefined || value === start + at + 1) &&
    next[0] !== undefined
  );
}

/** "% of the syrup", "% vom Sirup": what it is of is the whole, not one of its parts. */
const OF_A_WHOLE = /^\W*(%|per ?cent|prozent) (of (the|this)|vom|der|des|am|im) /i;

/** Sorts a row's headers into names of ingredients, totals and the rest. */
export function headersAcross(
  context: FinderContext,
  row: number,
  columns: readonly number[],
  first: number,
): Headers {
  const names: RecipeName[] = [];
  const totals: number[] = [];
  const roles = new Map<number, Role>();
  const rows = firstRows(context, first, columns);
  for (const [at, column] of columns.entries()) {
    const heading = textAt(context.sheet, row, column);
    const item = itemName(heading, context.check);
    const role = headerRole(item) ?? (bareShare(heading) === null ? null : "composition");
    if (!holdsAmounts(context, rows, columns.slice(0, at + 1))) {
      if (role !== null) roles.set(column, role);
    } else if (OF_A_WHOLE.test(heading)) {
      roles.set(column, "composition");
    } else if (context.check(item).kind !== "unknown") {
      names.push({ row, column, item });
    } else if (role === null && names.length === 0 && isNumbering(context, first, column)) {
      roles.set(column, "other");
    } else if (role === null) {
      names.push({ row, column, item });
    } else {
      roles.set(column, role);
      if (role === "total") totals.push(column);
    }
  }
  // Whatever a total is called, what stands behind it is no ingredient.
  const ofAmounts = () =>
    [...roles].filter(([, role]) => role === "amount").map(([column]) => column);
  const summed = sumsAcross(context, first, names, ofAmounts());
  const beyond = [
    ...beyondTotals(context, names, [...totals, ...summed]),
    ...beyondAnswers(context, names, roles, [...totals, ...summed]),
    ...ratiosAcross(context, row, names),
  ];
  const within = { names: names.filter(({ column }) => !beyond.includes(column)), totals, roles };
  for (const column of namesInDisguise(context.sheet, first, within)) {
    roles.delete(column);
    names.push({ row, column, item: itemName(textAt(context.sheet, row, column), context.check) });
  }
  const stated = [...statedShares(context, row, names), ...beyond];
  for (const column of stated) roles.set(column, "composition");
  const left = names.filter(({ column }) => !stated.includes(column));
  left.sort((one, other) => one.column - other.column);
  const sums = sumsAcross(context, first, left, ofAmounts());
  for (const column of sums) roles.set(column, "total");
  const listed = left.filter(({ column }) => !sums.includes(column));
  const answers = [...roles.keys()];
  const withoutCounts = (among: readonly RecipeName[]): readonly RecipeName[] => {
    const counts = countsAcross(context, first, among, [...totals, ...sums]);
    for (const column of counts) roles.set(column, "other");
    return among.filter(({ column }) => !counts.includes(column));
  };
  // Worked out from how many it is for, an amount is one still.
  const counted = withoutCounts(listed);
  const derived = derivedAcross(context, first, counted, answers);
  for (const column of derived)
    roles.set(column, headerRole(textAt(context.sheet, row, column)) ?? "other");
  const own = withoutCounts(counted.filter(({ column }) => !derived.includes(column)));
  return { names: own, totals: [...totals, ...sums], roles };
}
