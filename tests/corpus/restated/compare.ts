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

/** Each finding by its rule and the first of its cells, as the book had it before. */
function told({ workbook, recalculated, before }: Restated): string[] {
  return auditWorkbook(workbook, { recalculated }).findings.map(({ rule, sheet, cell }) => {
    const range = parseRangeName(cell);
    if (range === null) return `${rule} ${sheet}!${cell}`;
    const spot = { sheet, row: range.top, column: range.left };
    const was = before === undefined ? spot : before(spot);
    return `${rule} ${sheet}!${was === null ? "new" : cellName(was.row, was.column)}`;
  });
}

const known = new WeakMap<SeededBook, { readonly book: Restated; readonly found: string[] }>();

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
  const lost = one.filter((each) => !other.includes(each));
  const more = other.filter((each) => !one.includes(each));
  return lost.length + more.length === 0 ? null : { lost, more };
}
