import { useState } from "preact/hooks";
import type { AuditReport } from "../../src/audit/report/auditReport";
import type { Workbook } from "../../src/workbook/model";
import { saveFile } from "../components/saveFile";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import { acceptanceRows, acceptanceSheet } from "./acceptanceRows";
import { KeepRows } from "./KeepRows";
import { reportRows } from "./reportRows";
import { storeRows } from "./storeRows";
import type { useAcceptances } from "./useAcceptances";

interface KeepingProps {
  readonly context: PaneContext;
  readonly workbook: Workbook;
  readonly report: AuditReport;
  readonly acceptances: ReturnType<typeof useAcceptances>;
}

const today = (): string => new Date().toISOString().slice(0, 10);

/** What is kept of the reading, on request: a report on a new sheet, and what was accepted. */
export function Keeping({ context, workbook, report, acceptances }: KeepingProps) {
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
      const rows = reportRows(report, workbook, words, today());
      tell(reportSheet.added(await host.addSheet(reportSheet.name, rows)));
    });
  const savePage = async () => {
    const { reportFile } = await import(/* webpackChunkName: "report" */ "./reportFile");
    const file = `${reportSheet.name} ${today()}.html`;
    saveFile(file, new Blob([reportFile(page.workbook, report)], { type: "text/html" }));
    tell(page.saved(file));
  };
  return (
    <div class="keeping">
      <KeepRows
        context={context}
        texts={texts}
        sheet={acceptances.sheet}
        isStored={acceptances.isStored}
        store={(to) => {
          const rows = acceptanceRows(report, today());
          return storeRows(to, acceptanceSheet, rows, acceptances.sheet, texts);
        }}
        onStored={acceptances.onStored}
      />
      <div class="buttons">
        <button type="button" class="small" onClick={() => void addReport()}>
          {reportSheet.add}
        </button>
        <button type="button" class="small" onClick={() => void run(savePage)}>
          {page.save}
        </button>
      </div>
      {(fault ?? told) !== null && <p>{fault ?? told}</p>}
    </div>
  );
}
