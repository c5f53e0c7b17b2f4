import { useState } from "preact/hooks";
import type { ReportedFinding } from "../../src/audit/report/auditReport";
import type { Workbook } from "../../src/workbook/model";
import { useHostTask } from "../components/useHostTask";
import type { SheetEdit } from "../host";
import type { PaneContext } from "../view";
import { fixEdits, undoingEdits, type FixEdit } from "./fixEdits";

const placesOf = (edits: readonly SheetEdit[]): string =>
  edits.map(({ sheet, cell }) => `${sheet}!${cell}`).join(", ");

/** Mending one finding: what would be written, the writing, and writing the old contents back. */
export function useMending(
  context: PaneContext,
  finding: ReportedFinding,
  workbook: Workbook,
  onWritten: () => void,
) {
  const { host, words, announce } = context;
  const texts = words.readThrough.mend;
  const { fault, run } = useHostTask(context);
  const edits = fixEdits(finding, workbook);
  const [written, setWritten] = useState<readonly FixEdit[]>([]);
  const [told, setTold] = useState<readonly string[]>([]);
  const tell = (sentences: readonly string[]) => {
    setTold(sentences);
    announce(sentences.join(" "));
  };
  const leftSentence = (left: readonly SheetEdit[]) =>
    left.length === 0 ? [] : [texts.left(placesOf(left))];

  const write = () =>
    run(async () => {
      if (host === null) return;
      setTold([]);
      onWritten(); // even when it fails, cells may have been written by then
      const left = await host.writeCells(edits);
      const done = edits.filter((edit) => !left.includes(edit));
      setWritten(done);
      const doneSentences =
        done.length === 0 ? [] : [texts.written(placesOf(done)), texts.hostUndo];
      tell([...doneSentences, ...leftSentence(left)]);
    });
  const undo = () =>
    run(async () => {
      if (host === null) return;
      setTold([]);
      const back = undoingEdits(written);
      const left = await host.writeCells(back);
      setWritten(written.filter((_, at) => left.includes(back[at] as SheetEdit)));
      const done = back.filter((edit) => !left.includes(edit));
      tell([...(done.length === 0 ? [] : [texts.undone(placesOf(done))]), ...leftSentence(left)]);
    });
  return { edits, written, told, fault, write, undo };
}
