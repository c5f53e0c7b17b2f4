import type { Matrix } from "../../foundation/cell";
import { NAMESPACE } from "../../worksheet/namespace";
import type { Parameter, WorksheetFunction } from "../../worksheet/worksheetFunction";

/** A function as the grid's formula engine registers it: the full name, and how a call is answered. */
export interface GridFunction {
  /** With the namespace: "RIME.FREEZINGPOINT". */
  readonly name: string;
  readonly summary: string;
  readonly parameters: readonly Parameter[];
  /** Scalars or rows of cells, null for an omitted argument; a Problem for an error that came in. */
  readonly invoke: (args: readonly unknown[]) => Matrix;
}

/** The worksheet function as a cell of the grid calls it. */
export function gridFunctionOf(definition: WorksheetFunction): GridFunction {
  const { name, summary, parameters, evaluate } = definition;
  return { name: `${NAMESPACE}.${name}`, summary, parameters, invoke: evaluate };
}
