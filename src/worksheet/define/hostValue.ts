import type { Cell, Matrix } from "../../foundation/cell";
import { badInput, isProblem, outsideValidity, type Problem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";

/** One argument as we work with it: null when it was left out. */
export type Given = Matrix | null;

const errorOf = (code: string): Problem =>
  code.includes("#N/A") ? outsideValidity(code) : badInput(code);

/** What Excel may hand over in place of a plain value: an error, or an entity with a basic value. */
interface HostObject {
  readonly type?: unknown;
  readonly basicType?: unknown;
  readonly basicValue?: unknown;
  readonly code?: unknown;
}

function fromObject(value: object): Cell {
  if (isProblem(value)) return value;
  if (value instanceof Date)
    return badInput("this is a date object; a number or a text is expected.");
  const { type, basicType, basicValue, code } = value as HostObject;
  if (type === "Entity") {
    return badInput("this is a card, not a value; a number or a text is expected.");
  }
  if (type === "Error" || basicType === "Error") {
    return errorOf(typeof basicValue === "string" ? basicValue : "#VALUE!");
  }
  if (typeof code === "string" && code.startsWith("#")) return errorOf(code);
  if (type === "Empty" || basicType === "Empty") return null;
  if (basicValue !== undefined && typeof basicValue !== "object") return toCell(basicValue);
  return badInput("this is an object; a number or a text is expected.");
}

/** Whatever a host hands over for one cell; blanks ("" and null) become null. */
export function toCell(value: unknown): Cell {
  switch (typeof value) {
    case "number":
      if (Number.isFinite(value)) return value;
      return badInput(`${value} is not a number that can be used; a finite one is expected.`);
    case "string":
      return value.trim() === "" ? null : value;
    case "boolean":
      return value;
    case "undefined":
      return null;
    case "object":
      return value === null ? null : fromObject(value);
    default:
      return badInput(`a ${typeof value} is not a cell's value; a number or a text is expected.`);
  }
}

/** A scalar, a row or rows of cells as rows of cells; a problem when the rows are ragged or there are none. */
export function toMatrix(name: string, value: unknown): Result<Given & object> | null {
  if (value === null || value === undefined) return null;
  if (!Array.isArray(value)) return [[toCell(value)]];
  const rows: unknown[] = value.some(Array.isArray) ? value : [value];
  const width = Array.isArray(rows[0]) ? rows[0].length : 0;
  if (width === 0) return badInput(`${name}: the range is empty; at least one cell is expected.`);
  const ragged = rows.findIndex((row) => !Array.isArray(row) || row.length !== width);
  if (ragged >= 0) {
    return badInput(
      `${name}: row ${ragged + 1} is not as long as the first, which has ${width} cells; all rows must be equally long.`,
    );
  }
  return (rows as unknown[][]).map((row) => Array.from(row, toCell));
}

/** A single empty cell. */
export const isBlankCell = (matrix: Matrix): boolean =>
  matrix.length === 1 && matrix[0]?.length === 1 && matrix[0][0] === null;
