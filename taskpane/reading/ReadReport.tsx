import { useEffect, useRef, useState } from "preact/hooks";
import type { Finding, Severity } from "../../src/audit/finding";
import type { AuditReport } from "../../src/audit/report/auditReport";
import { Notice } from "../components/Notice";
import type { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import { AcceptedList } from "./AcceptedList";
import { FindingList } from "./FindingList";
import { Keeping } from "./Keeping";
import { ReadRecipes } from "./ReadRecipes";
import { SeverityFilter } from "./SeverityFilter";
import type { useAcceptances } from "./useAcceptances";
import type { useCorrections } from "./useCorrections";
import type { Reading } from "./useReading";

const SEVERITIES: readonly Severity[] = ["error", "warning", "note"];

interface ReadReportProps {
  readonly context: PaneContext;
  readonly reading: Reading;
  readonly report: AuditReport;
  /** True while the workbook is read anew, and this is out of sight. */
  readonly isReading: boolean;
  readonly acceptances: ReturnType<typeof useAcceptances>;
  readonly corrections: ReturnType<typeof useCorrections>;
  readonly run: ReturnType<typeof useHostTask>["run"];
  readonly onWritten: () => void;
  readonly onReadAgain: () => void;
}

/** What the reading found, worst first; what was accepted; what was read as a recipe; what can be kept. */
export function ReadReport(props: ReadReportProps) {
  const {
    context,
    reading,
    report,
    isReading,
    acceptances,
    corrections,
    run,
    onWritten,
    onReadAgain,
  } = props;
  const { words, host, announce } = context;
  const texts = words.readThrough;
  const [hidden, setHidden] = useState<ReadonlySet<Severity>>(new Set());
  const heading = useRef<HTMLHeadingElement>(null);
  const goesOnHere = useRef(false);
  useEffect(() => {
    // The form that had it read anew is gone: whoever was in it goes on at the result.
    if (!isReading && goesOnHere.current) heading.current?.focus();
    goesOnHere.current &&= isReading;
  }, [isReading]);
  /** The button that was pressed goes with its finding: the focus stays near, on the count. */
  const told = (sentence: string) => {
    heading.current?.focus();
    announce(sentence);
  };
  const go = ({ sheet, cell }: Finding) =>
    void run(() => (host === null ? Promise.resolve() : host.goTo(sheet, cell)));
  const toggle = (severity: Severity) => {
    const next = new Set(hidden);
    if (!next.delete(severity)) next.add(severity);
    setHidden(next);
  };
  const { calculation } = reading.workbook;
  const { errors, warnings, notes } = report.summary;
  const shown = SEVERITIES.filter((severity) => !hidden.has(severity)).map((severity) => ({
    severity,
    findings: report.findings.filter((finding) => finding.severity === severity),
  }));
  const isAllHidden =
    report.findings.length > 0 && shown.every(({ findings }) => findings.length === 0);
  return (
    <>
      <h2 ref={heading} tabIndex={-1}>
        {texts.result(report.findings.length)}
      </h2>
      {calculation === "automatic" ? (
        <p class="quiet">{texts.values.automatic}</p>
      ) : (
        <Notice tone="warning">{texts.values[calculation]}</Notice>
      )}
      <SeverityFilter
        words={words}
        counts={{ error: errors, warning: warnings, note: notes }}
        hidden={hidden}
        onToggle={toggle}
      />
      {isAllHidden && <p class="quiet">{texts.allHidden}</p>}
      {shown.map(
        ({ severity, findings }) =>
          findings.length > 0 && (
            <FindingList
              key={`${severity} ${reading.turn}`} // what was said of a finding is of its reading
              context={context}
              workbook={reading.workbook}
              severity={severity}
              findings={findings}
              onGo={go}
              onAccept={(key, reason) => {
                acceptances.put({ finding: key, reason });
                told(texts.accept.done);
              }}
              onWritten={onWritten}
            />
          ),
      )}
      <AcceptedList
        context={context}
        report={report}
        onGo={go}
        onWithdraw={(key) => {
          acceptances.remove(key);
          told(texts.accept.withdrawn);
        }}
      />
      <ReadRecipes
        context={context}
        reading={reading}
        corrections={corrections}
        onReadAgain={() => {
          goesOnHere.current = true;
          onReadAgain();
        }}
      />
      <Keeping
        context={context}
        workbook={reading.workbook}
        report={report}
        acceptances={acceptances}
      />
    </>
  );
}
