import type { Cell, Matrix } from "../foundation/cell";
import { isProblem, type Problem } from "../foundation/problem";
import { worksheetFunctions } from "./functions";
import { hostCard } from "./hostCard";
import type { WorksheetFunction } from "./worksheetFunction";

// The only file that knows Excel's CustomFunctions, and the only one that throws at a user's input:
// Excel takes the error of a one-cell answer as an exception, and errors within a spill as values.

function hostError({ kind, message }: Problem): CustomFunctions.Error {
  const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
  return new CustomFunctions.Error(kind === "badInput" ? invalidValue : notAvailable, message);
}

const hostCell = (cell: Cell): unknown => (isProblem(cell) ? hostError(cell) : (cell ?? ""));

/** A function's answer as the host wants it: rows of cells, or a thrown error when it is one bad cell. */
export function hostAnswer(answer: Matrix): unknown[][] {
  const only = answer.length === 1 && answer[0]?.length === 1 ? answer[0][0] : null;
  // eslint-disable-next-line @typescript-eslint/only-throw-error -- the host's own error class, as it demands
  if (isProblem(only)) throw hostError(only);
  return answer.map((row) => row.map(hostCell));
}

/** Whether the host takes entity values from functions: integration with data types, in its own words. */
function showsCards(): boolean {
  if (typeof Office === "undefined") return false;
  const context = Office.context as Office.Context | undefined; // there once the host is ready
  const supports = (set: string, version: string): boolean =>
    context?.requirements.isSetSupported(set, version) ?? false;
  return supports("CustomFunctionsRuntime", "1.4") && supports("ExcelApi", "1.16");
}

/** A call as the host makes it; texts that stand for a card become one where the host shows cards. */
function answerFor({ evaluate, cards }: WorksheetFunction, args: readonly unknown[]): unknown[][] {
  const answer = hostAnswer(evaluate(args));
  const found = cards !== undefined && showsCards() ? cards(args) : null;
  if (found === null) return answer;
  return answer.map((row, r) =>
    row.map((cell, c) => {
      const card = found[r]?.[c] ?? null;
      return card === null ? cell : hostCard(card);
    }),
  );
}

/** Hands every function of the list to the host. The last argument Excel adds (the invocation) is dropped. */
export function registerWorksheetFunctions(): void {
  for (const definition of worksheetFunctions) {
    CustomFunctions.associate(definition.name, (...args: unknown[]) =>
      answerFor(definition, args.slice(0, definition.parameters.length)),
    );
  }
}

if (typeof CustomFunctions !== "undefined") registerWorksheetFunctions();
