import { auditRecalculated } from "../audit/auditRecalculated";
import { auditWorkbook } from "../audit/auditWorkbook";
import type { RecipeCorrection } from "../audit/recipes/corrections/recipeCorrection";
import { storedCorrections } from "../audit/recipes/corrections/storedCorrections";
import type { AuditReport } from "../audit/report/auditReport";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { DecimalMark } from "../workbook/csv/decimalMark";
import type { Workbook } from "../workbook/model";
import type { SheetRange } from "../workbook/precedents";
import { openBook } from "./openBook";

export interface AuditTask {
  readonly file: string;
  readonly decimal: DecimalMark | null;
  readonly recalculation: boolean;
  /** What the user says of recipes, after what the workbook itself keeps. */
  readonly corrections: readonly RecipeCorrection[];
}

/** The grid's engine costs a second and 100 MB: it is loaded when it is first needed. */
async function recalculate(workbook: Workbook, blocks: readonly SheetRange[]) {
  const engine = await import("../workbook/evaluate");
  return engine.recalculate(workbook, blocks);
}

/** Reads and audits one file. */
export async function auditFile(task: AuditTask): Promise<Result<AuditReport>> {
  const opened = await openBook(task.file, task.decimal);
  if (isProblem(opened)) return opened;
  const { workbook, reading } = opened;
  const kept = storedCorrections(workbook);
  const options = { corrections: [...kept.entries, ...task.corrections] };
  const report = task.recalculation
    ? await auditRecalculated(workbook, recalculate, options)
    : auditWorkbook(workbook, options);
  return { ...report, reading: [...reading, ...kept.notes, ...report.reading] };
}
