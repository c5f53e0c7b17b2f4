import type { Severity } from "../finding";
import type { Acceptance, AuditReport, StaleAcceptance } from "./auditReport";
import { placeOfKey } from "./findingKey";

function staleness(acceptance: Acceptance, places: ReadonlySet<string>): StaleAcceptance {
  const place = placeOfKey(acceptance.finding);
  const why = places.has(place)
    ? "What the cell holds has changed since: the finding counts again."
    : "There is no such finding any more.";
  return { ...acceptance, why };
}

/**
 * Takes the findings that were accepted out of the count and keeps them with their reason; an acceptance whose
 * cell has changed, or whose finding is gone, is told as stale. Of two for one finding the later holds.
 */
export function applyAcceptances(
  report: AuditReport,
  acceptances: readonly Acceptance[],
): AuditReport {
  const all = [...report.findings, ...report.accepted.map(({ finding }) => finding)];
  const reasons = new Map(acceptances.map(({ finding, reason }) => [finding, reason]));
  const keys = new Set(all.map(({ key }) => key));
  const places = new Set(all.map(({ key }) => placeOfKey(key)));
  const findings = all.filter(({ key }) => !reasons.has(key));
  const accepted = all.flatMap((finding) => {
    const reason = reasons.get(finding.key);
    return reason === undefined ? [] : [{ finding, reason }];
  });
  const count = (wanted: Severity) => findings.filter(({ severity }) => severity === wanted).length;
  return {
    ...report,
    findings,
    accepted,
    staleAcceptances: acceptances
      .filter(({ finding }) => !keys.has(finding))
      .map((acceptance) => staleness(acceptance, places)),
    summary: {
      ...report.summary,
      errors: count("error"),
      warnings: count("warning"),
      notes: count("note"),
      accepted: accepted.length,
    },
  };
}
