import type { Cell, Matrix } from "../../src/foundation/cell";
import { badInput } from "../../src/foundation/problem";
import type { BlockValue } from "../host";

const ERROR_TEXT = /^#(N\/A|VALUE!|REF!|DIV\/0!|NAME\?|NUM!|NULL!|SPILL!|CALC!|FIELD!|BUSY!)$/;

/** A value of the sheet as the worksheet functions take it: "" is blank, an error's text is an error. */
export function toCell(value: BlockValue): Cell {
  if (value === "") return null;
  if (typeof value === "string" && ERROR_TEXT.test(value)) {
    return badInput(`The cell holds the error ${value}.`);
  }
  return value;
}

export const toMatrix = (values: readonly (readonly BlockValue[])[]): Matrix =>
  values.map((row) => row.map(toCell));
