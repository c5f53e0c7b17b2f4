import { auditWorkbook } from "../../src/audit/auditWorkbook";
import type { Finding } from "../../src/audit/finding";
import type { Workbook, WorkbookSheet } from "../../src/workbook/model";
import type { Recalculation } from "../../src/workbook/recalculation";
import { bookOf, type Rows } from "./bookOf";

/** All findings on a workbook of one sheet, or of sheets by name. */
export function findingsOf(
  rows: Rows | Readonly<Record<string, Rows>>,
  extras: Partial<WorkbookSheet> = {},
  workbook: Partial<Workbook> = {},
  recalculated?: Recalculation,
): readonly Finding[] {
  const sheets = Array.isArray(rows) ? { Sheet1: rows as Rows } : (rows as Record<string, Rows>);
  const book = bookOf(sheets, { Sheet1: extras }, workbook);
  return auditWorkbook(book, recalculated === undefined ? {} : { recalculated }).findings;
}

/** Cell and rule of each finding, in the order of the sheet. */
export const placesOf = (findings: readonly Finding[]): string[] =>
  findings.map(({ cell, rule }) => `${cell} ${rule}`).sort();

export const of = (findings: readonly Finding[], rule: string): readonly Finding[] =>
  findings.filter((finding) => finding.rule === rule);
