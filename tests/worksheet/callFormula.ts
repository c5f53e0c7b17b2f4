import type { Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";

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

/** Evaluates a formula of one call with constants, such as =RIME.MOLES("sucrose",{1;2}). */
export function callFormula(formula: string): Matrix {
  const [, name = "", inside = ""] = /^=RIME\.([A-Z]+)\((.*)\)$/.exec(formula) ?? [];
  return callFunction(name, ...split(inside, ",").map(literal));
}
