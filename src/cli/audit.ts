import path from "node:path";
import { applyAcceptances } from "../audit/report/applyAcceptances";
import type { AuditReport } from "../audit/report/auditReport";
import { terminalReport } from "../audit/report/terminalReport";
import { isProblem, type Problem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { acceptancesIn } from "./acceptancesIn";
import type { AuditTask } from "./auditFile";
import { AUDIT_USAGE, auditOptions, type AuditArguments } from "./auditOptions";
import { correctionsIn } from "./correctionsIn";
import { inWorker } from "./inWorker";
import { writeNew } from "./writeNew";

// npm run -s audit -- book.xlsx [options]; AUDIT_USAGE lists them. The workbook is only read.

const CLEAN = 0;
const FINDINGS = 1;
const UNREADABLE = 2;

/** Reads the file in a thread of its own and takes accepted findings out. */
async function reportOn(options: AuditArguments): Promise<Result<AuditReport>> {
  const acceptances = await acceptancesIn(options.accepted);
  if (isProblem(acceptances)) return acceptances;
  const corrections = await correctionsIn(options.corrections);
  if (isProblem(corrections)) return corrections;
  const { file, decimal, recalculation } = options;
  const task: AuditTask = { file, decimal, recalculation, corrections };
  const report = await inWorker<AuditReport>("auditWorker.ts", task);
  return isProblem(report) ? report : applyAcceptances(report, acceptances);
}

async function writePage(
  { file, html, replace }: AuditArguments,
  report: AuditReport,
): Promise<Problem | null> {
  if (html === null) return null;
  const { htmlReport } = await import("../audit/report/htmlReport");
  return writeNew(html, htmlReport(path.basename(file), report), replace);
}

const refuse = (sentence: string): number => {
  process.stderr.write(`${sentence}\n`);
  return UNREADABLE;
};

/** Prints a report on standard output and answers with the exit code. */
async function audit(args: readonly string[]): Promise<number> {
  const options = auditOptions(args);
  if (options === null) {
    process.stdout.write(`${AUDIT_USAGE}\n`);
    return CLEAN;
  }
  if ("misuse" in options) return refuse(`${options.misuse} See npm run -s audit -- --help.`);
  const report = await reportOn(options);
  if (isProblem(report)) return refuse(report.message);
  const unwritten = await writePage(options, report);
  const text = options.json
    ? JSON.stringify(report, null, 2)
    : terminalReport(path.basename(options.file), report, options);
  process.stdout.write(`${text}\n`);
  if (unwritten !== null) return refuse(unwritten.message);
  return report.summary.errors + report.summary.warnings > 0 ? FINDINGS : CLEAN;
}

// A reader that closes early (head) is no mishap.
process.stdout.on("error", () => {
  process.exitCode = FINDINGS;
});

void audit(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code;
  },
  (mishap: unknown) => {
    const what = mishap instanceof Error ? mishap.message : String(mishap);
    const [line = ""] = what.split("\n");
    process.exitCode = refuse(`The audit itself failed on this workbook (${line}).`);
  },
);
