import { auditWorkbook } from "../../../src/audit/auditWorkbook";
import { cellName, parseRangeName } from "../../../src/workbook/address";
import type { SeededBook } from "../seed";
import { toWorkbook } from "../toWorkbook";
import type { Restated, Restatement } from "./restatement";

/** What the audit says of a restated book and not of the book, and the other way round. */
export interface Difference {
  readonly lost: readonly string[];
  readonly more: readonly string[];
}

interface Told {
  /** The rule and the first of its cells, as the book had it before. */
  readonly text: string;
  /** The rows of a finding about a whole list, as the book had them before; null of one about some cells. */
  readonly list: { readonly of: string; readonly top: number; readonly bottom: number } | null;
}

function told({ workbook, recalculated, before }: Restated): Told[] {
  return auditWorkbook(workbook, { recalculated }).findings.map(({ rule, sheet, cell }) => {
    const range = parseRangeName(cell);
    if (range === null) return { text: `${rule} ${sheet}!${cell}`, list: null };
    const { top, left, bottom, right } = range;
    const was = (row: number, column: number) => {
      const spot = { sheet, row, column };
      return before === undefined ? spot : before(spot);
    };
    const first = was(top, left);
    const text = `${rule} ${sheet}!${first === null ? "new" : cellName(first.row, first.column)}`;
    if (top === bottom || left === right) return { text, list: null };
    // Of a sheet that was turned the columns were its rows.
    const down = Array.from({ length: bottom - top + 1 }, (_, at) => was(top + at, left)?.row);
    const across = Array.from({ length: right - left + 1 }, (_, at) => was(top, left + at)?.row);
    const known = [...down, ...across].filter((row) => row !== undefined);
    const list = { of: `${rule} ${sheet}`, top: Math.min(...known), bottom: Math.max(...known) };
    return { text, list };
  });
}

/** A list is the same whether its headings are counted to it or not. */
const isSame = (one: Told, other: Told): boolean =>
  one.text === other.text ||
  (one.list !== null &&
    one.list.of === other.list?.of &&
    one.list.top <= other.list.bottom &&
    other.list.top <= one.list.bottom);

const known = new WeakMap<SeededBook, { readonly book: Restated; readonly found: Told[] }>();

/** A seeded book and what is found in it: the same for every way of restating it. */
function asItIs(seeded: SeededBook) {
  const book = toWorkbook(seeded.marked.book);
  const whole = known.get(seeded) ?? { book, found: told(book) };
  known.set(seeded, whole);
  return whole;
}

/** Audits a seeded book as it is and as it is restated; null where that changes no finding. */
export function compareRestated(seeded: SeededBook, { restate }: Restatement): Difference | null {
  const { book, found: one } = asItIs(seeded);
  const other = told(restate(book, seeded.marked));
  const without = (all: readonly Told[], from: readonly Told[]) =>
    all.filter((each) => !from.some((same) => isSame(each, same))).map(({ text }) => text);
  const [lost, more] = [without(one, other), without(other, one)];
  return lost.length + more.length === 0 ? null : { lost, more };
}
