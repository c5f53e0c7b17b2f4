import { ArrayValueObject, type BaseValueObject } from "@univerjs/engine-formula";
import type { Cell } from "../../foundation/cell";
import { badInput, outsideValidity } from "../../foundation/problem";

/** A value of the grid's engine as our functions see it: blank is null, an error is a Problem naming it. */
function cellFromGrid(value: BaseValueObject | null): Cell {
  if (value === null || value.isNull()) return null;
  if (value.isError()) {
    const error = String(value.getValue());
    return error === "#N/A" ? outsideValidity(error) : badInput(error);
  }
  if (value.isLambda()) return badInput("#CALC!");
  return value.getValue();
}

/**
 * One argument of a call: a scalar, null when left out or blank, or rows of cells for a range or an
 * array of whatever size. The engine's own bridge to custom functions turns blanks into 0; this does not.
 */
export function argumentFromGrid(value: BaseValueObject): Cell | Cell[][] {
  if (!(value instanceof ArrayValueObject)) return cellFromGrid(value);
  return Array.from({ length: value.getRowCount() }, (_row, row) =>
    Array.from({ length: value.getColumnCount() }, (_column, column) =>
      cellFromGrid(value.get(row, column) ?? null),
    ),
  );
}
