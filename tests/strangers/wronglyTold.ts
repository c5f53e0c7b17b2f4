import { auditWorkbook } from "../../src/audit/auditWorkbook";
import type { Finding } from "../../src/audit/finding";
import { strangersWorkbook, type StrangersBook } from "./strangersBook";

/** What the audit says of a stranger's workbook that is not true of it. */
export function wronglyTold(book: StrangersBook): readonly Finding[] {
  const { workbook, recalculated } = strangersWorkbook(book);
  const told = new Set(book.told);
  return auditWorkbook(workbook, { recalculated }).findings.filter(({ rule }) => !told.has(rule));
}
