import { useRef, useState } from "preact/hooks";
import type { RecipeCorrection } from "../../src/audit/recipes/corrections/recipeCorrection";
import type { AuditReport } from "../../src/audit/report/auditReport";
import type { Workbook } from "../../src/workbook/model";
import { useHostTask } from "../components/useHostTask";
import { Cancelled } from "../office/cancelled";
import type { PaneContext } from "../view";
import { inSlices } from "./inSlices";
import type { Kept } from "./useKept";

export interface Reading {
  /** Which reading of this sitting it is. */
  readonly turn: number;
  readonly workbook: Workbook;
  readonly report: AuditReport;
  /** What of the user's corrections was not followed, and what they leave out, in sentences. */
  readonly notes: readonly string[];
}

/** Reading the workbook through: progress while it lasts, a way to stop it, then the report. */
export function useReading(
  context: PaneContext,
  /** Told what the workbook keeps of the user's words on recipes, it answers what holds of them. */
  correctionsBy: (kept: Kept<RecipeCorrection>) => readonly RecipeCorrection[],
  onRead: (reading: Reading) => void,
) {
  const { host, words, announce } = context;
  const texts = words.readThrough;
  const { fault, run } = useHostTask(context);
  const [progress, setProgress] = useState<string | null>(null);
  const [reading, setReading] = useState<Reading | null>(null);
  const turns = useRef(0);
  const running = useRef<AbortController | null>(null);

  const read = async (signal: AbortSignal) => {
    if (host === null) return;
    const workbook = await host.readWorkbook({
      signal,
      onSheet: (done, total) => setProgress(texts.sheets(done, total)),
    });
    setProgress(texts.checks);
    // The rules are a third of the pane: they are loaded when they are first needed.
    const { auditInSteps } = await import(
      /* webpackChunkName: "reading" */ "../../src/audit/auditInSteps"
    );
    const { storedCorrections } = await import(
      /* webpackChunkName: "reading" */ "../../src/audit/recipes/corrections/storedCorrections"
    );
    const kept = storedCorrections(workbook);
    const report = await inSlices(
      auditInSteps(workbook, { corrections: correctionsBy(kept), isLive: true }),
      ({ done, total }) => setProgress(texts.checking(done, total)),
      signal,
    );
    const next = {
      turn: (turns.current += 1),
      workbook,
      report,
      notes: [...kept.notes, ...report.reading],
    };
    setReading(next);
    onRead(next);
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
