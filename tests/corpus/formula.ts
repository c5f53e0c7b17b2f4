import { parseCellName } from "../../src/workbook/address";

/** A formula taken apart. */
export type Term =
  | { readonly kind: "constant"; readonly value: number | string | boolean }
  | {
      readonly kind: "cells";
      readonly sheet: string | null;
      readonly from: { readonly row: number; readonly column: number };
      readonly to: { readonly row: number; readonly column: number };
    }
  | { readonly kind: "call"; readonly name: string; readonly parts: readonly Term[] }
  | { readonly kind: "named"; readonly name: string; readonly column: string | null }
  | { readonly kind: "missing" }
  | { readonly kind: "broken" };

const TOKEN =
  /\s*(?:(?<text>"(?:[^"]|"")*")|(?<number>\d+(?:\.\d+)?(?:E[+-]?\d+)?)|(?<broken>(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_]*)!)?#REF!)|(?<cells>(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_]*)!)?\$?[A-Z]{1,2}\$?\d{1,5}(?::\$?[A-Z]{1,2}\$?\d{1,5})?)(?![\p{L}\p{N}_(.])|(?<column>[\p{L}_][\p{L}\p{N}_]*\[[^\]]+\])|(?<name>[\p{L}_][\p{L}\p{N}_.]*)|(?<sign><=|>=|<>|[-+*/^&=<>%(),]))/uy;

interface Token {
  readonly kind: string;
  readonly text: string;
}

function tokens(formula: string): Token[] {
  const found: Token[] = [];
  let at = 0;
  while (at < formula.trimEnd().length) {
    TOKEN.lastIndex = at;
    const match = TOKEN.exec(formula);
    if (match === null) throw new Error(`The corpus cannot read ${formula}`);
    const groups: [string, string | undefined][] = Object.entries(match.groups!);
    const [kind, text] = groups.find(([, part]) => part !== undefined) as [string, string];
    found.push({ kind, text });
    at = TOKEN.lastIndex;
  }
  return found;
}

function cellsTerm(text: string): Term {
  const [address, sheet] = text.split("!").reverse();
  const [from, to = from] = address!.split(":");
  const name = sheet === undefined ? null : sheet.replace(/^'|'$/g, "").replaceAll("''", "'");
  return { kind: "cells", sheet: name, from: parseCellName(from!)!, to: parseCellName(to!)! };
}

const LEVELS: readonly (readonly string[])[] = [
  ["=", "<>", "<", ">", "<=", ">="],
  ["&"],
  ["+", "-"],
  ["*", "/"],
  ["^"],
];

class Reader {
  private at = 0;
  constructor(private readonly list: readonly Token[]) {}

  private peek = (): string | undefined => this.list[this.at]?.text;

  read(level = 0): Term {
    const signs = LEVELS[level];
    if (signs === undefined) return this.readPercent();
    let left = this.read(level + 1);
    while (this.list[this.at]?.kind === "sign" && signs.includes(this.peek()!)) {
      const name = this.list[this.at++]!.text;
      left = { kind: "call", name, parts: [left, this.read(level + 1)] };
    }
    return left;
  }

  private readPercent(): Term {
    let term = this.readSingle();
    while (this.peek() === "%") {
      this.at++;
      term = { kind: "call", name: "%", parts: [term] };
    }
    return term;
  }

  private readSingle(): Term {
    const token = this.list[this.at++];
    if (token === undefined) return { kind: "missing" };
    const { kind, text } = token;
    if (kind === "text") {
      return { kind: "constant", value: text.slice(1, -1).replaceAll('""', '"') };
    }
    if (kind === "number") return { kind: "constant", value: Number(text) };
    if (kind === "broken") return { kind: "broken" };
    if (kind === "cells") return cellsTerm(text);
    if (kind === "column") {
      const [name, column] = text.slice(0, -1).split("[");
      return { kind: "named", name: name!.toUpperCase(), column: column! };
    }
    if (kind === "name") return this.readName(text.toUpperCase());
    if (text === "-" || text === "+") {
      return { kind: "call", name: `unary${text}`, parts: [this.readPercent()] };
    }
    const inner = this.read();
    this.at++; // ")"
    return inner;
  }

  private readName(name: string): Term {
    if (this.peek() !== "(") {
      if (name === "TRUE" || name === "FALSE") return { kind: "constant", value: name === "TRUE" };
      return { kind: "named", name, column: null };
    }
    this.at++;
    const parts: Term[] = [];
    while (this.peek() !== ")" && this.at < this.list.length) {
      parts.push(this.peek() === "," ? { kind: "missing" } : this.read());
      if (this.peek() === ",") this.at++;
    }
    this.at++;
    return { kind: "call", name, parts };
  }
}

const kept = new Map<string, Term>();

/** Takes apart the small grammar that the corpus uses: signs, cells, ranges, calls. */
export function parseFormula(formula: string): Term {
  let term = kept.get(formula);
  if (term === undefined) {
    term = new Reader(tokens(formula)).read();
    kept.set(formula, term);
  }
  return term;
}
