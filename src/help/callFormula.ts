import type { Matrix } from "../foundation/cell";
import { splitOutside } from "../foundation/splitOutside";
import { callFunction } from "../worksheet/callFunction";

function literal(text: string): unknown {
  if (text === "") return null;
  if (text.startsWith("{")) {
    return splitOutside(text.slice(1, -1), ";").map((row) => splitOutside(row, ",").map(literal));
  }
  return text.startsWith('"') ? text.slice(1, -1) : Number(text);
}

const PARTS = /^=RIME\.([A-Z]+)\((.*)\)$/;

/** The function's name in a formula of one call, without the namespace. */
export const nameOf = (formula: string): string => PARTS.exec(formula)?.[1] ?? "";

/** The constants in a formula of one call, as a host would hand them over. */
export const argumentsOf = (formula: string): unknown[] =>
  splitOutside(PARTS.exec(formula)?.[2] ?? "", ",").map(literal);

/** Evaluates a formula of one call with constants, such as =RIME.MOLES("sucrose",{1;2}). */
export const callFormula = (formula: string): Matrix =>
  callFunction(nameOf(formula), ...argumentsOf(formula));
