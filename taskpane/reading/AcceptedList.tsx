import type { Finding } from "../../src/audit/finding";
import type { AuditReport } from "../../src/audit/report/auditReport";
import type { PaneContext } from "../view";
import { FindingItem } from "./FindingItem";

interface AcceptedListProps {
  readonly context: PaneContext;
  readonly report: AuditReport;
  readonly onGo: (finding: Finding) => void;
  readonly onWithdraw: (key: string) => void;
}

/** The findings that were accepted, with the reason; and acceptances that fit nothing any more. */
export function AcceptedList({ context, report, onGo, onWithdraw }: AcceptedListProps) {
  const texts = context.words.readThrough.accept;
  const { accepted, staleAcceptances } = report;
  if (accepted.length + staleAcceptances.length === 0) return null;
  return (
    <details class="accepted" open>
      <summary>{texts.list(accepted.length)}</summary>
      <ul class="findings">
        {accepted.map(({ finding, reason }) => (
          <FindingItem
            key={`${finding.key} ${finding.message}`}
            context={context}
            finding={finding}
            onGo={onGo}
          >
            <p>
              <strong>{texts.because(reason)}</strong>
            </p>
            <button
              type="button"
              class="small"
              aria-label={texts.withdrawFor(`${finding.sheet}!${finding.cell}`)}
              onClick={() => onWithdraw(finding.key)}
            >
              {texts.withdraw}
            </button>
          </FindingItem>
        ))}
        {staleAcceptances.map(({ finding, reason, why }) => (
          <li key={finding} class="finding">
            <code>{finding.slice(0, finding.lastIndexOf("#"))}</code>
            <p>{texts.stale(reason, why)}</p>
            <button type="button" class="small" onClick={() => onWithdraw(finding)}>
              {texts.forget}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
