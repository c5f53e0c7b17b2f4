import type { AuditReport, ReportedFinding } from "../../src/audit/report/auditReport";
import type { Workbook } from "../../src/workbook/model";
import type { Contents } from "../host";
import { asText } from "../office/cellContent";
import type { Words } from "../words/words";

type Row = (string | number)[];

/** Texts stay texts, whatever they begin with: a sheet's words are quoted, never calculated. */
const cells = (row: readonly (string | number)[]): Row =>
  row.map((cell) => (typeof cell === "string" ? asText(cell) : cell));

function findingRow(finding: ReportedFinding, words: Words, reason: string): Row {
  const { severity, sheet, cell, message, effect, fix } = finding;
  const { said } = words;
  const effectCells =
    effect === null
      ? ["", "", "", ""]
      : [said(effect.quantity), effect.from, effect.to, effect.unit];
  const kind = words.readThrough.severityNames[severity];
  return [kind, sheet, cell, said(message), ...effectCells, said(fix ?? ""), reason];
}

/** The report as the rows of a sheet: summary, findings, accepted ones with their reason, recipes that were read. */
export function reportRows(
  report: AuditReport,
  { calculation }: Workbook,
  words: Words,
  date: string,
): Contents {
  const { findings, accepted, recipes, summary } = report;
  const texts = words.readThrough.reportSheet;
  const rows: Row[] = [
    [texts.title(date)],
    [texts.summary(summary)],
    [words.readThrough.values[calculation]],
    [],
    [...texts.findingHeaders],
    ...findings.map((finding) => findingRow(finding, words, "")),
    ...accepted.map(({ finding, reason }) => findingRow(finding, words, reason)),
    [],
    [...texts.recipeHeaders],
    ...recipes.map(({ sheet, range, recipes: count, taken }) => [
      ...[sheet, range, count, words.said(taken)],
    ]),
    [],
    [texts.nothingChanged],
  ];
  return rows.map(cells);
}
