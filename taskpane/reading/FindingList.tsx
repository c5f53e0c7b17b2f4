import { useState } from "preact/hooks";
import type { Finding, Severity } from "../../src/audit/finding";
import type { ReportedFinding } from "../../src/audit/report/auditReport";
import type { Workbook } from "../../src/workbook/model";
import type { PaneContext } from "../view";
import { FindingActions } from "./FindingActions";
import { FindingItem } from "./FindingItem";

const MOST_AT_ONCE = 50; // more are drawn when asked for: thousands would stop the pane

interface FindingListProps {
  readonly context: PaneContext;
  readonly workbook: Workbook;
  readonly severity: Severity;
  readonly findings: readonly ReportedFinding[];
  readonly onGo: (finding: Finding) => void;
  readonly onAccept: (key: string, reason: string) => void;
  readonly onWritten: () => void;
}

/** The findings of one severity, the first fifty of them until more are asked for. */
export function FindingList(props: FindingListProps) {
  const { context, workbook, severity, findings, onGo, onAccept, onWritten } = props;
  const texts = context.words.readThrough;
  const [most, setMost] = useState(MOST_AT_ONCE);
  return (
    <section>
      <h3>{texts.severities[severity](findings.length)}</h3>
      <ul class="findings">
        {findings.slice(0, most).map((finding) => (
          <FindingItem
            key={`${finding.key} ${finding.message}`}
            context={context}
            finding={finding}
            onGo={onGo}
          >
            <FindingActions
              context={context}
              finding={finding}
              workbook={workbook}
              onAccept={(reason) => onAccept(finding.key, reason)}
              onWritten={onWritten}
            />
          </FindingItem>
        ))}
      </ul>
      {findings.length > most && (
        <button type="button" class="small" onClick={() => setMost(most + MOST_AT_ONCE)}>
          {texts.more(findings.length - most)}
        </button>
      )}
    </section>
  );
}
