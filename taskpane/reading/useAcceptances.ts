import { useMemo, useState } from "preact/hooks";
import { applyAcceptances } from "../../src/audit/report/applyAcceptances";
import type { Acceptance, AuditReport } from "../../src/audit/report/auditReport";
import { storedAcceptances, type StoredAcceptances } from "./acceptanceSheet";
import type { Reading } from "./useReading";

interface Known {
  /** What the workbook keeps. */
  readonly stored: StoredAcceptances;
  /** What holds now: that, and what was accepted or taken back since. */
  readonly now: readonly Acceptance[];
}

const NOTHING: Known = { stored: { sheet: null, acceptances: [] }, now: [] };

const asOne = (acceptances: readonly Acceptance[]): string =>
  JSON.stringify(acceptances.map(({ finding, reason }) => [finding, reason]).sort());

const without = (acceptances: readonly Acceptance[], key: string) =>
  acceptances.filter(({ finding }) => finding !== key);

/** A new reading: what the workbook keeps by now, with what was accepted in the pane and is not kept yet. */
function afterReading({ stored, now }: Known, found: StoredAcceptances): Known {
  const keys = new Set([...found.acceptances, ...stored.acceptances].map(({ finding }) => finding));
  const unkept = now.filter(({ finding }) => !keys.has(finding));
  return { stored: found, now: [...found.acceptances, ...unkept] };
}

/** The findings that were accepted: those kept in the workbook, and those of this sitting. */
export function useAcceptances(report: AuditReport | null) {
  const [{ stored, now }, setKnown] = useState(NOTHING);
  const shown = useMemo(
    () => (report === null ? null : applyAcceptances(report, now)),
    [report, now],
  );
  const change = (next: (all: readonly Acceptance[]) => readonly Acceptance[]) =>
    setKnown((known) => ({ ...known, now: next(known.now) }));
  return {
    shown,
    sheet: stored.sheet,
    isStored: asOne(stored.acceptances) === asOne(now),
    onRead: ({ workbook }: Reading) =>
      setKnown((known) => afterReading(known, storedAcceptances(workbook))),
    accept: (finding: string, reason: string) =>
      change((all) => [...without(all, finding), { finding, reason }]),
    withdraw: (key: string) => change((all) => without(all, key)),
    onStored: (sheet: string) =>
      setKnown((known) => ({ ...known, stored: { sheet, acceptances: now } })),
  };
}
