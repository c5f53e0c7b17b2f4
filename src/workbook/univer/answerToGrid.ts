import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import type { Cell, Matrix } from "../../foundation/cell";

function cellToGrid(cell: Cell): BaseValueObject {
  if (cell === null) return NullValueObject.create();
  if (typeof cell === "number") {
    return Number.isFinite(cell)
      ? NumberValueObject.create(cell)
      : ErrorValueObject.create(ErrorType.NUM);
  }
  if (typeof cell === "boolean") return BooleanValueObject.create(cell);
  if (typeof cell === "string") return StringValueObject.create(cell);
  const error = cell.kind === "badInput" ? ErrorType.VALUE : ErrorType.NA;
  return ErrorValueObject.create(error, cell.message);
}

/**
 * A function's answer as the grid's engine wants it: one value, or an array that spills. A Problem becomes
 * an error value that carries its sentence along, in its own cell of a spill.
 */
export function answerToGrid(answer: Matrix): BaseValueObject {
  const rows = answer.map((row) => row.map(cellToGrid));
  const first = rows[0] ?? [];
  if (rows.length === 1 && first.length === 1 && first[0] !== undefined) return first[0];
  return ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: first.length,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}
