import { auditWorkbook } from "../../src/audit/auditWorkbook";
import type { Workbook, WorkbookSheet } from "../../src/workbook/model";
import { bookOf, type Rows } from "./bookOf";

/** A workbook, and every error and warning that it is to have. */
export interface Tried {
  readonly what: string;
  readonly sheets: Readonly<Record<string, Rows>>;
  /** Rule, sheet and cell of each. */
  readonly found: readonly string[];
  readonly extras?: Readonly<Record<string, Partial<WorkbookSheet>>>;
  readonly workbook?: Partial<Workbook>;
}

/** The rules by which something is found, notes and all. */
export const rulesOn = (sheets: Tried["sheets"]): string[] =>
  auditWorkbook(bookOf(sheets)).findings.map(({ rule }) => rule);

/** Expects just these findings of a workbook, notes aside. */
export function expectFound({ sheets, found, extras, workbook }: Tried): void {
  const said = auditWorkbook(bookOf(sheets, extras, workbook))
    .findings.filter(({ severity }) => severity !== "note")
    .map(({ rule, sheet, cell }) => `${rule} ${sheet}!${cell}`);
  expect(said.sort()).toEqual([...found].sort());
}
