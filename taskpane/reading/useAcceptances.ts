import { useMemo } from "preact/hooks";
import { applyAcceptances } from "../../src/audit/report/applyAcceptances";
import type { Acceptance, AuditReport } from "../../src/audit/report/auditReport";
import { useKept } from "./useKept";

/** The findings that were accepted, those kept in the workbook and those of this sitting, and the report by them. */
export function useAcceptances(report: AuditReport | null) {
  const kept = useKept<Acceptance>(({ finding }) => finding);
  const shown = useMemo(
    () => (report === null ? null : applyAcceptances(report, kept.now)),
    [report, kept.now],
  );
  return { ...kept, shown };
}
