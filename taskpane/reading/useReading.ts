import { useState } from "preact/hooks";
import { auditWorkbook, type AuditReport } from "../../src/audit/auditWorkbook";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";

/** Lets the browser draw before long work begins. */
const drawn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** Reading the workbook through: progress while it lasts, then the report. */
export function useReading(context: PaneContext) {
  const { host, words, announce } = context;
  const { fault, run } = useHostTask(context);
  const [progress, setProgress] = useState<string | null>(null);
  const [report, setReport] = useState<AuditReport | null>(null);
  const say = (sentence: string) => {
    setProgress(sentence);
    announce(sentence);
  };
  const start = async () => {
    if (host === null || progress !== null) return;
    say(words.readThrough.starts);
    await run(async () => {
      const workbook = await host.readWorkbook({
        onSheet: (done, total) => setProgress(words.readThrough.sheets(done, total)),
      });
      setProgress(words.readThrough.checks);
      await drawn();
      const next = auditWorkbook(workbook);
      setReport(next);
      announce(words.readThrough.result(next.findings.length));
    });
    setProgress(null);
  };
  return { progress, report, fault, run, start };
}
