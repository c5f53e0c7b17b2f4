import type { Cell, Matrix } from "../foundation/cell";
import { isProblem, type Problem } from "../foundation/problem";
import { worksheetFunctions } from "./functions";

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

/** Hands every function of the list to the host. The last argument Excel adds (the invocation) is dropped. */
export function registerWorksheetFunctions(): void {
  for (const { name, parameters, evaluate } of worksheetFunctions) {
    CustomFunctions.associate(name, (...args: unknown[]) =>
      hostAnswer(evaluate(args.slice(0, parameters.length))),
    );
  }
}

if (typeof CustomFunctions !== "undefined") registerWorksheetFunctions();
