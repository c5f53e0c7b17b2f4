import type { AuditReport, ReportedFinding } from "./auditReport";
import { effectText } from "./effectText";
import { extentSentence, methodSentences, resultSentence, takenSentences } from "./reportSentences";

export interface TerminalOptions {
  /** Whether to print the keys by which findings are accepted. */
  readonly keys?: boolean;
}

function findingLines(finding: ReportedFinding, { keys }: TerminalOptions): string {
  const { severity, sheet, cell, message, effect, fix, rule, key } = finding;
  const lines = [`${severity.toUpperCase()}  ${sheet}!${cell}  ${message}  [${rule}]`];
  lines.push(`       effect: ${effect === null ? "none on the answer" : effectText(effect)}`);
  if (fix !== undefined) lines.push(`       fix: ${fix}`);
  if (keys === true) lines.push(`       key: ${key}`);
  return lines.join("\n");
}

function acceptedLines({ accepted, staleAcceptances }: AuditReport): string[] {
  const kept = accepted.map(
    ({ finding: { sheet, cell, rule }, reason }) =>
      `ACCEPTED  ${sheet}!${cell}  ${reason}  [${rule}]`,
  );
  const stale = staleAcceptances.map(
    ({ finding, reason, why }) => `NO LONGER ACCEPTED  ${finding}  ${reason}: ${why}`,
  );
  return kept.length + stale.length === 0 ? [] : [...kept, ...stale, ""];
}

/** Control characters in a sheet's texts must not steer the terminal. */
const tame = (text: string): string => text.replace(/[^\P{Cc}\n]/gu, "�");

/** The report as text for a terminal. */
export function terminalReport(
  name: string,
  report: AuditReport,
  options: TerminalOptions = {},
): string {
  const { findings } = report;
  const spaced =
    findings.length > 0 ? [...findings.map((each) => findingLines(each, options)), ""] : [];
  return tame(
    [
      `${name}: ${extentSentence(report)}`,
      ...[...takenSentences(report), ...methodSentences(report)].map((line) => `  ${line}`),
      "",
      ...spaced,
      ...acceptedLines(report),
      resultSentence(report),
    ].join("\n"),
  );
}
