import { useRef, useState } from "preact/hooks";
import { auditInSteps } from "../../src/audit/auditInSteps";
import type { AuditReport } from "../../src/audit/report/auditReport";
import type { Workbook } from "../../src/workbook/model";
import { useHostTask } from "../components/useHostTask";
import { Cancelled } from "../office/cancelled";
import type { PaneContext } from "../view";
import { inSlices } from "./inSlices";

export interface Reading {
  readonly workbook: Workbook;
  readonly report: AuditReport;
}

/** Reading the workbook through: progress while it lasts, a way to stop it, then the report. */
export function useReading(context: PaneContext, onRead: (reading: Reading) => void) {
  const { host, words, announce } = context;
  const texts = words.readThrough;
  const { fault, run } = useHostTask(context);
  const [progress, setProgress] = useState<string | null>(null);
  const [reading, setReading] = useState<Reading | null>(null);
  const running = useRef<AbortController | null>(null);

  const read = async (signal: AbortSignal) => {
    if (host === null) return;
    const workbook = await host.readWorkbook({
      signal,
      onSheet: (done, total) => setProgress(texts.sheets(done, total)),
    });
    setProgress(texts.checks);
    const report = await inSlices(
      auditInSteps(workbook),
      ({ done, total }) => setProgress(texts.checking(done, total)),
      signal,
    );
    setReading({ workbook, report });
    onRead({ workbook, report });
    announce(texts.result(report.findings.length));
  };
  const start = async () => {
    if (running.current !== null) return;
    running.current = new AbortController();
    const { signal } = running.current;
    setProgress(texts.starts);
    announce(texts.starts);
    await run(async () => {
      try {
        await read(signal);
      } catch (error) {
        if (!(error instanceof Cancelled)) throw error;
        announce(texts.cancelled);
      }
    });
    running.current = null;
    setProgress(null);
  };
  const cancel = () => running.current?.abort();
  return { progress, reading, fault, run, start, cancel };
}
