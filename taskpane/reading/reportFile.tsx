import { render } from "preact";
import type { AuditReport } from "../../src/audit/report/auditReport";
import { pageFile, ReportPage } from "../../src/audit/report/ReportPage";

/** The report's page as the text of a file, written out by the browser itself. */
export function reportFile(name: string, report: AuditReport): string {
  const apart = document.createDocumentFragment();
  render(<ReportPage name={name} report={report} />, apart);
  return pageFile(apart.firstElementChild?.outerHTML ?? "");
}
