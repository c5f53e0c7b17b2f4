import type { SourceKey } from "../../foundation/bibliography";
import type { Cell, Matrix } from "../../foundation/cell";
import { badInput, isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import type { Card } from "../card";
import type { WorksheetFunction } from "../worksheetFunction";
import type { ValuesOf } from "./argument";
import type { Given } from "./hostValue";
import { createMemo } from "./memo";
import { givenOf, parametersOf, readCall, type Arguments, type ReadCall } from "./readCall";

/** What a function says of itself; see `WorksheetFunction`. */
export interface Described<Args extends Arguments> {
  readonly name: string;
  readonly summary: string;
  /** In the order in which a cell gives them. */
  readonly args: Args;
  readonly unit: string;
  readonly sources: readonly SourceKey[];
  readonly example: WorksheetFunction["example"];
  readonly method?: string;
  readonly seeAlso?: readonly string[];
}

type Scalar = number | string | boolean;

interface FunctionDefinition<Args extends Arguments> extends Described<Args> {
  /** The answer to one set of values. */
  readonly compute: (values: ValuesOf<Args>) => Result<Scalar>;
  /** The card that a host may show in place of the answer's text, or null. */
  readonly card?: (values: ValuesOf<Args>) => Card | null;
}

interface TableDefinition<Args extends Arguments> extends Described<Args> {
  /** The rows to spill, header row first. */
  readonly table: (values: ValuesOf<Args>) => Result<Matrix>;
}

/** A function that answers one cell for each set of values: arguments broadcast, errors stay in their cell. */
export function defineFunction<const Args extends Arguments>(
  definition: FunctionDefinition<Args>,
): WorksheetFunction {
  const { compute, card, args, ...described } = definition;
  const answer = (given: readonly Given[]): Matrix => {
    const call = readCall(args, given);
    if (isProblem(call)) return [[call]];
    return eachPlace(call, (values): Cell =>
      isProblem(values) ? values : sound(compute(values), args),
    );
  };
  const made = asWorksheetFunction(described, args, answer);
  if (card === undefined) return made;
  const cards = (raw: readonly unknown[]) => {
    const given = givenOf(made.parameters, raw);
    const call = isProblem(given) ? given : readCall(args, given);
    if (isProblem(call)) return null;
    return eachPlace(call, (values) => (isProblem(values) ? null : card(values)));
  };
  return { ...made, cards };
}

/** Something of the values at every place of a call's shape. */
function eachPlace<Args extends Arguments, T>(
  { shape: { rows, columns }, valuesAt }: ReadCall<Args>,
  of: (values: Result<ValuesOf<Args>>) => T,
): T[][] {
  return Array.from({ length: rows }, (_row, row) =>
    Array.from({ length: columns }, (_column, column) => of(valuesAt(row, column))),
  );
}

/** A function that spills a table: every argument stands for one value, and there is one recipe. */
export function defineTable<const Args extends Arguments>(
  definition: TableDefinition<Args>,
): WorksheetFunction {
  const { table, args, ...described } = definition;
  const answer = (given: readonly Given[]): Matrix => {
    const call = readCall(args, given);
    if (isProblem(call)) return [[call]];
    const { rows, columns } = call.shape;
    if (rows !== 1 || columns !== 1) {
      return [
        [
          badInput(
            `${definition.name} spills a table for one recipe at a time; the arguments describe ${rows} × ${columns}, and 1 × 1 is expected.`,
          ),
        ],
      ];
    }
    const values = call.valuesAt(0, 0);
    const answer = isProblem(values) ? values : table(values);
    return isProblem(answer)
      ? [[answer]]
      : answer.map((row) => row.map((cell) => sound(cell, args)));
  };
  return asWorksheetFunction(described, args, answer);
}

/** The object that hosts call: raw arguments to cells, then the answer, from the memo when it is known. */
function asWorksheetFunction(
  described: Omit<WorksheetFunction, "parameters" | "evaluate">,
  args: Arguments,
  answer: (given: readonly Given[]) => Matrix,
): WorksheetFunction {
  const parameters = parametersOf(args);
  const memo = createMemo();
  const evaluate = (raw: readonly unknown[]): Matrix => {
    const given = givenOf(parameters, raw);
    if (isProblem(given)) return [[given]];
    const known = memo.find(given);
    if (known !== undefined) return known;
    const found = answer(given);
    memo.keep(given, found);
    return found;
  };
  return { ...described, parameters, evaluate };
}

/** Never NaN or Infinity: numbers that ran over on extreme input are declined in words. */
function sound(cell: Cell, args: Arguments): Cell {
  if (typeof cell !== "number" || Number.isFinite(cell)) return cell;
  const names = parametersOf(args).map(({ name }) => name);
  return badInput(
    `With these ${names.join(", ")} the answer runs over what a cell can hold; numbers of a size that occurs in a kitchen are expected.`,
  );
}
