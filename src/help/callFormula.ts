import type { Matrix } from "../foundation/cell";
import { callFunction } from "../worksheet/callFunction";

/** Splits at a separator outside of quotes and braces. */
function split(text: string, separator: string): string[] {
  const parts = [""];
  let depth = 0;
  let quoted = false;
  for (const sign of text) {
    if (sign === '"') quoted = !quoted;
    if (!quoted && sign === "{") depth += 1;
    if (!quoted && sign === "}") depth -= 1;
    if (sign === separator && depth === 0 && !quoted) parts.push("");
    else parts.push(`${parts.pop() ?? ""}${sign}`);
  }
  return parts;
}

function literal(text: string): unknown {
  if (text === "") return null;
  if (text.startsWith("{")) {
    return split(text.slice(1, -1), ";").map((row) => split(row, ",").map(literal));
  }
  return text.startsWith('"') ? text.slice(1, -1) : Number(text);
}

const PARTS = /^=RIME\.([A-Z]+)\((.*)\)$/;

/** The function's name in a formula of one call, without the namespace. */
export const nameOf = (formula: string): string => PARTS.exec(formula)?.[1] ?? "";

/** The constants in a formula of one call, as a host would hand them over. */
export const argumentsOf = (formula: string): unknown[] =>
  split(PARTS.exec(formula)?.[2] ?? "", ",").map(literal);

/** Evaluates a formula of one call with constants, such as =RIME.MOLES("sucrose",{1;2}). */
export const callFormula = (formula: string): Matrix =>
  callFunction(nameOf(formula), ...argumentsOf(formula));
