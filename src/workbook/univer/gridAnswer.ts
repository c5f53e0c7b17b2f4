import {
  ArrayValueObject,
  ErrorValueObject,
  type BaseReferenceObject,
  type BaseValueObject,
  type FunctionVariantType,
} from "@univerjs/engine-formula";
import { errorSentence } from "./errorSentence";

/** An error as a cell shows it, and one sentence on it. */
export interface GridError {
  readonly error: string;
  readonly message: string;
}

export type GridValue = number | string | boolean | null | GridError;

/** What a formula answers: one value, or rows of them. */
export type GridAnswer = GridValue | readonly (readonly GridValue[])[];

export const isGridError = (value: unknown): value is GridError =>
  typeof value === "object" && value !== null && "error" in value;

const plainError = (error: string): GridError => ({ error, message: errorSentence(error) });

function gridValue(value: BaseValueObject | null): GridValue {
  if (value === null || value.isNull()) return null;
  if (value instanceof ErrorValueObject) {
    const error = value.getErrorType();
    return { error, message: value.getErrorContent() || errorSentence(error) };
  }
  if (value.isLambda()) return plainError("#CALC!");
  const content = value.getValue();
  return typeof content === "number" && !Number.isFinite(content) ? plainError("#NUM!") : content;
}

/** What the engine answered, in full double precision, errors with their sentence. */
export function gridAnswer(result: FunctionVariantType): GridAnswer {
  const value = result.isReferenceObject()
    ? (result as BaseReferenceObject).toArrayValueObject()
    : (result as BaseValueObject);
  if (!(value instanceof ArrayValueObject)) return gridValue(value);
  const [rows, columns] = [value.getRowCount(), value.getColumnCount()];
  if (rows === 1 && columns === 1) return gridValue(value.getFirstCell());
  return Array.from({ length: rows }, (_row, row) =>
    Array.from({ length: columns }, (_column, column) => gridValue(value.get(row, column) ?? null)),
  );
}
