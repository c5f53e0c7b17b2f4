import type { ReportedFinding } from "../../src/audit/report/auditReport";
import type { Workbook } from "../../src/workbook/model";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import { Accept } from "./Accept";
import { MendPreview } from "./MendPreview";
import { useMending } from "./useMending";

interface FindingActionsProps {
  readonly context: PaneContext;
  readonly finding: ReportedFinding;
  readonly workbook: Workbook;
  readonly onAccept: (reason: string) => void;
  readonly onWritten: () => void;
}

/** What can be done about a finding: mend it where the fix is known, write the old contents back, or accept it. */
export function FindingActions(props: FindingActionsProps) {
  const { context, finding, workbook, onAccept, onWritten } = props;
  const texts = context.words.readThrough.mend;
  const place = `${finding.sheet}!${finding.cell}`;
  const mending = useMending(context, finding, workbook, onWritten);
  const { edits, written, told, fault } = mending;
  return (
    <>
      <div class="finding-actions">
        {edits.length > 0 && (
          <MendPreview
            context={context}
            place={place}
            edits={edits}
            onWrite={() => void mending.write()}
          />
        )}
        <Accept context={context} place={place} onAccept={onAccept} />
      </div>
      {fault !== null && <Notice tone="trouble">{fault}</Notice>}
      {told.length > 0 && (
        <Notice tone={written.length > 0 ? "good" : "note"}>
          {told.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Notice>
      )}
      {written.length > 0 && (
        <button type="button" class="small" onClick={() => void mending.undo()}>
          {texts.undo}
        </button>
      )}
    </>
  );
}
