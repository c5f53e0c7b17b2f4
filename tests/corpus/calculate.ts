import { callFunction } from "../../src/worksheet/callFunction";
import type { WorkbookValue } from "../../src/workbook/model";
import { isFormula, sheetNamed, type CorpusBook, type CorpusSheet } from "./book";
import { parseFormula, type Term } from "./formula";

type Value = WorkbookValue;
type Block = readonly (readonly Value[])[];

const ERROR = (error: string): Value => ({ error });
const isError = (value: Value): value is { error: string } =>
  typeof value === "object" && value !== null;

class Failure extends Error {
  constructor(readonly value: Value) {
    super("a cell's error");
  }
}

function num(value: Value): number {
  if (isError(value)) throw new Failure(value);
  if (typeof value === "string") {
    const read = Number(value);
    if (value.trim() === "" || Number.isNaN(read)) throw new Failure(ERROR("#VALUE!"));
    return read;
  }
  return Number(value ?? 0);
}

const numbersIn = (blocks: readonly Block[]): number[] =>
  blocks.flat(2).flatMap((value) => {
    if (isError(value)) throw new Failure(value);
    return typeof value === "number" ? [value] : [];
  });

const single = (block: Block): Value => block[0]?.[0] ?? null;
const sum = (list: readonly number[]): number => list.reduce((total, value) => total + value, 0);
const texts = (block: Block): string => {
  const value = single(block);
  if (isError(value)) throw new Failure(value);
  return typeof value === "string" ? value : JSON.stringify(value ?? "").replace(/^""$/, "");
};
const key = (value: Value): string => texts([[value]]).toLowerCase();

function compared(name: string, left: Value, right: Value): boolean {
  if (name === "=") return (left ?? "") === (right ?? "");
  if (name === "<>") return (left ?? "") !== (right ?? "");
  const [one, other] = [num(left), num(right)];
  if (name === "<") return one < other;
  if (name === ">") return one > other;
  return name === "<=" ? one <= other : one >= other;
}

function divided(left: number, right: number): number {
  if (right === 0) throw new Failure(ERROR("#DIV/0!"));
  return left / right;
}

function product(blocks: readonly Block[]): number {
  const [first] = blocks;
  return sum(
    first!.flatMap((row, r) =>
      row.map((_, c) =>
        blocks.reduce((total, block) => {
          const value = block[r]?.[c] ?? 0;
          if (isError(value)) throw new Failure(value);
          return total * (typeof value === "number" ? value : 0);
        }, 1),
      ),
    ),
  );
}

function lookUp([wanted, table, column]: readonly Block[]): Value {
  const name = key(single(wanted!));
  const row = table!.find(([first]) => key(first ?? null) === name);
  if (row === undefined) throw new Failure(ERROR("#N/A"));
  return row[num(single(column!)) - 1] ?? null;
}

const pair = ([left, right]: readonly Block[]): [number, number] => [
  num(single(left!)),
  num(single(right!)),
];

function matched([wanted, list]: readonly Block[]): Value {
  const name = key(single(wanted!));
  const at = list!.flat().findIndex((value) => key(value) === name);
  if (at < 0) throw new Failure(ERROR("#N/A"));
  return at + 1;
}

/** The cells that a defined name or a table's column stands for. */
export function namedCells(
  book: CorpusBook,
  { name, column }: Extract<Term, { kind: "named" }>,
): Term {
  const defined = book.names.find((each) => each.name.toUpperCase() === name);
  if (defined !== undefined) return parseFormula(defined.refersTo);
  const [sheet, table] = book.sheets.flatMap((each) =>
    each.tables
      .filter((candidate) => candidate.name.toUpperCase() === name)
      .map((found) => [each, found] as const),
  )[0] ?? [null, null];
  if (table === null || column === null) throw new Failure(ERROR("#NAME?"));
  const at = table.range.left + table.columns.indexOf(column);
  const last = table.range.bottom - Number(table.hasTotals);
  return {
    ...{ kind: "cells", sheet: sheet.name, from: { row: table.range.top + 1, column: at } },
    to: { row: last, column: at },
  };
}

const builtIn: Readonly<Record<string, (parts: readonly Block[]) => Value>> = {
  "+": (parts) => sum(pair(parts)),
  "-": (parts) => pair(parts)[0] - pair(parts)[1],
  "*": (parts) => pair(parts)[0] * pair(parts)[1],
  "/": (parts) => divided(...pair(parts)),
  "^": (parts) => pair(parts)[0] ** pair(parts)[1],
  "%": ([part]) => num(single(part!)) / 100,
  "&": ([left, right]) => texts(left!) + texts(right!),
  "unary-": ([part]) => -num(single(part!)),
  "unary+": ([part]) => num(single(part!)),
  SUM: (parts) => sum(numbersIn(parts)),
  SUMPRODUCT: product,
  AVERAGE: (parts) => divided(sum(numbersIn(parts)), numbersIn(parts).length),
  MIN: (parts) => Math.min(...numbersIn(parts)),
  MAX: (parts) => Math.max(...numbersIn(parts)),
  COUNT: (parts) => numbersIn(parts).length,
  ABS: ([part]) => Math.abs(num(single(part!))),
  ROUND: (parts) => {
    const [value, digits] = pair(parts);
    return Math.round(value * 10 ** digits) / 10 ** digits;
  },
  IF: ([test, yes, no]) => (single(test!) === true ? single(yes!) : single(no!)),
  VLOOKUP: lookUp,
  MATCH: matched,
  INDEX: ([list, at]) => list!.flat()[num(single(at!)) - 1] ?? null,
  NOW: () => 46000.5,
  HYPERLINK: ([address, shownAs]) => single(shownAs ?? address!),
};

const answered = new Map<string, Value>();

function ours(name: string, parts: readonly Block[]): Value {
  const key = `${name} ${JSON.stringify(parts)}`;
  const before = answered.get(key);
  if (before !== undefined) return before;
  const answer = callFunction(name.replace(/^RIME\./, ""), ...parts)[0]![0]!;
  const value =
    typeof answer !== "object"
      ? answer
      : ERROR(answer.kind === "outsideValidity" ? "#N/A" : "#VALUE!");
  answered.set(key, value);
  return value;
}

/** The values of a book's cells as a spreadsheet would calculate them anew, by its own small engine. */
export function calculate(book: CorpusBook): (sheet: string, row: number, column: number) => Value {
  const known = new Map<string, Value>();

  const valueAt = (sheet: CorpusSheet, row: number, column: number): Value => {
    const cell = sheet.cells[row]?.[column];
    if (cell === undefined) return null;
    const { content } = cell;
    if (!isFormula(cell)) return content;
    const key = `${sheet.name}!${row},${column}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    known.set(key, 0); // a circle reads 0, as a spreadsheet shows
    const value = result(cell.content.slice(1), sheet, cell.stored);
    known.set(key, value);
    return value;
  };

  function result(formula: string, sheet: CorpusSheet, stored: Value | undefined): Value {
    try {
      return single(blockOf(parseFormula(formula), sheet));
    } catch (problem) {
      if (problem instanceof Failure) return problem.value;
      if (stored !== undefined) return stored; // another workbook, an add-in that is not there
      throw problem;
    }
  }

  function blockOf(term: Term, sheet: CorpusSheet): Block {
    if (term.kind === "constant") return [[term.value]];
    if (term.kind === "missing") return [[null]];
    if (term.kind === "named") return blockOf(namedCells(book, term), sheet);
    if (term.kind === "broken") throw new Failure(ERROR("#REF!"));
    if (term.kind === "call") return [[called(term, sheet)]];
    const from = term.sheet === null ? sheet : sheetNamed(book, term.sheet);
    return Array.from({ length: term.to.row - term.from.row + 1 }, (_, r) =>
      Array.from({ length: term.to.column - term.from.column + 1 }, (_unused, c) =>
        valueAt(from, term.from.row + r, term.from.column + c),
      ),
    );
  }

  /** SUBTOTAL(109, …) and AGGREGATE(9, 5, …): the sum of the rows that are shown. */
  const sumOfShown = (parts: readonly Term[], sheet: CorpusSheet): Value =>
    sum(
      parts.flatMap((part): readonly number[] => {
        const cells = part.kind === "named" ? namedCells(book, part) : part;
        if (cells.kind !== "cells") return numbersIn([blockOf(cells, sheet)]);
        const { hiddenRows } = cells.sheet === null ? sheet : sheetNamed(book, cells.sheet);
        const rows = blockOf(cells, sheet);
        return numbersIn([rows.filter((_, index) => !hiddenRows.has(cells.from.row + index))]);
      }),
    );

  function called({ name, parts }: Extract<Term, { kind: "call" }>, sheet: CorpusSheet): Value {
    if (name === "SUBTOTAL") return sumOfShown(parts.slice(1), sheet);
    if (name === "AGGREGATE") return sumOfShown(parts.slice(2), sheet);
    const blocks = parts.map((part) => blockOf(part, sheet));
    if (name.startsWith("RIME.")) return ours(name, blocks);
    if (/^[=<>]/.test(name)) return compared(name, single(blocks[0]!), single(blocks[1]!));
    const apply = builtIn[name];
    if (apply === undefined) throw new Error(`The corpus has no function ${name}.`);
    return apply(blocks);
  }

  return (sheet, row, column) => valueAt(sheetNamed(book, sheet), row, column);
}
