import type { Cell, Matrix } from "../../src/foundation/cell";
import { splitOutside } from "../../src/foundation/splitOutside";
import { NAMESPACE } from "../../src/worksheet/namespace";

/** What stands in an argument's place in a formula. */
export type Argument =
  | { readonly kind: "value"; readonly value: Cell | Matrix }
  | { readonly kind: "reference"; readonly text: string }
  | { readonly kind: "call"; readonly call: OwnCall }
  | { readonly kind: "other"; readonly text: string };

/** One of our functions as a formula calls it. */
export interface OwnCall {
  /** Without the namespace, in capitals. */
  readonly name: string;
  readonly text: string;
  readonly args: readonly Argument[];
}

const START = new RegExp(`(?<![\\p{L}\\p{N}_.])${NAMESPACE}\\.([A-Z]+)\\(`, "iu");

/** Quoted text as blanks of the same length, so that places stay. */
const withoutQuotes = (formula: string): string =>
  formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, (quoted) => " ".repeat(quoted.length));

function closingBracket(bare: string, from: number): number {
  let depth = 0;
  for (let at = from; at < bare.length; at += 1) {
    if (bare[at] === "(") depth += 1;
    if (bare[at] === ")") depth -= 1;
    if (depth === 0) return at;
  }
  return -1;
}

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(E[+-]?\d+)?%?$/i;
const REFERENCE = /^(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?[\p{L}_$][\p{L}\p{N}_$.:]*#?$/u;
const TABLE = /^[\p{L}_][\p{L}\p{N}_.]*\[.*\]$/su;

function constant(text: string): Cell | undefined {
  if (text === "") return null;
  if (/^(TRUE|FALSE)$/i.test(text)) return text.toUpperCase() === "TRUE";
  if (/^"(?:[^"]|"")*"$/.test(text)) return text.slice(1, -1).replace(/""/g, '"');
  if (!NUMBER.test(text)) return undefined;
  return text.endsWith("%") ? Number(text.slice(0, -1)) / 100 : Number(text);
}

function arrayOf(text: string): Matrix | undefined {
  const rows = splitOutside(text.slice(1, -1), ";").map((row) =>
    splitOutside(row, ",").map((cell) => constant(cell.trim())),
  );
  return rows.some((row) => row.includes(undefined)) ? undefined : (rows as Cell[][]);
}

function argument(given: string): Argument {
  const text = given.trim();
  const value = text.startsWith("{") ? arrayOf(text) : constant(text);
  if (value !== undefined) return { kind: "value", value };
  const [call] = ownCalls(text);
  if (call !== undefined && call.text === text) return { kind: "call", call };
  const isReference = REFERENCE.test(text) || TABLE.test(text);
  return { kind: isReference ? "reference" : "other", text };
}

/** The calls of our functions in a formula, outermost first, in their order; those inside another's arguments belong to it. */
export function ownCalls(formula: string): readonly OwnCall[] {
  const bare = withoutQuotes(formula);
  const found: OwnCall[] = [];
  for (let from = 0; ;) {
    const start = START.exec(bare.slice(from));
    if (start === null) return found;
    const begin = from + start.index;
    const open = begin + start[0].length - 1;
    const close = closingBracket(bare, open);
    if (close < 0) return found;
    const inside = formula.slice(open + 1, close);
    found.push({
      name: (start[1] ?? "").toUpperCase(),
      text: formula.slice(begin, close + 1),
      args: inside.trim() === "" ? [] : splitOutside(inside, ",").map(argument),
    });
    from = close + 1;
  }
}
