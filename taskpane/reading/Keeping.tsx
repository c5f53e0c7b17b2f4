import { useState } from "preact/hooks";
import type { AuditReport } from "../../src/audit/report/auditReport";
import { saveFile } from "../components/saveFile";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import { reportRows } from "./reportRows";
import { storeAcceptances, type Stored } from "./storeAcceptances";

interface KeepingProps {
  readonly context: PaneContext;
  readonly report: AuditReport;
  /** The sheet that keeps accepted findings; null when there is none. */
  readonly acceptanceSheet: string | null;
  readonly isStored: boolean;
  readonly onStored: (sheet: string) => void;
}

const today = (): string => new Date().toISOString().slice(0, 10);

/** What is kept of the reading, on request: a report on a new sheet, and what was accepted. */
export function Keeping(props: KeepingProps) {
  const { context, report, acceptanceSheet, isStored, onStored } = props;
  const { host, words, announce } = context;
  const { reportSheet, page, acceptanceSheet: texts } = words.readThrough;
  const { fault, run } = useHostTask(context);
  const [told, setTold] = useState<string | null>(null);
  const tell = (sentence: string) => {
    setTold(sentence);
    announce(sentence);
  };
  const addReport = () =>
    run(async () => {
      if (host === null) return;
      const rows = reportRows(report, words, today());
      tell(reportSheet.added(await host.addSheet(reportSheet.name, rows)));
    });
  const savePage = async () => {
    const { reportFile } = await import(/* webpackChunkName: "audit" */ "./reportFile");
    const file = `${reportSheet.name} ${today()}.html`;
    saveFile(file, new Blob([reportFile(page.workbook, report)], { type: "text/html" }));
    tell(page.saved(file));
  };
  const sentenceOf = ({ outcome, sheet }: Stored): string => {
    if (outcome === "changed meanwhile") return texts.changed(sheet);
    if (outcome === "not ours") return texts.notOurs(sheet);
    return outcome === "added" ? texts.added(sheet) : texts.updated(sheet);
  };
  const store = () =>
    run(async () => {
      if (host === null) return;
      const stored = await storeAcceptances(host, words, report, acceptanceSheet, today());
      if (stored.outcome === "added" || stored.outcome === "updated") onStored(stored.sheet);
      tell(sentenceOf(stored));
    });
  return (
    <div class="keeping">
      {!isStored && (
        <p class="quiet">{acceptanceSheet === null ? texts.about : texts.aboutUpdate}</p>
      )}
      <div class="buttons">
        <button type="button" class="small" onClick={() => void addReport()}>
          {reportSheet.add}
        </button>
        <button type="button" class="small" onClick={() => void run(savePage)}>
          {page.save}
        </button>
        {!isStored && (
          <button type="button" class="small" onClick={() => void store()}>
            {acceptanceSheet === null ? texts.add : texts.update(acceptanceSheet)}
          </button>
        )}
      </div>
      {(fault ?? told) !== null && <p>{fault ?? told}</p>}
    </div>
  );
}
