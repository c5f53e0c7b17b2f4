import { renderToStaticMarkup } from "preact-render-to-string";
import type { AuditReport } from "./auditReport";
import { pageFile, ReportPage } from "./ReportPage";

/** The report's page as the text of a file. */
export const htmlReport = (name: string, report: AuditReport): string =>
  pageFile(renderToStaticMarkup(<ReportPage name={name} report={report} />));
