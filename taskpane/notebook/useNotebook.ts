import { useCallback, useEffect, useState } from "preact/hooks";
import { useHostTask } from "../components/useHostTask";
import type { SpreadsheetHost } from "../host";
import type { PaneContext } from "../view";
import type { NotebookEntry } from "./entry";
import { isNotebook, nextLine, notebookContents, readEntries } from "./notebookSheet";

export interface KeptNotebook {
  readonly sheet: string;
  readonly entries: readonly NotebookEntry[];
}

/** The first sheet that is a notebook, as it is now. */
async function findNotebook(host: SpreadsheetHost) {
  const heads = await host.readOnEachSheet("A1:T1"); // a notebook begins in the corner: that is cheap to see
  for (const { sheet } of heads.filter(isNotebook)) {
    const block = await host.usedBlock(sheet);
    if (block !== null && isNotebook(block)) return { sheet, block };
  }
  return null;
}

/** The workbook's notebook: read when the view is in front, a line added on request. */
export function useNotebook(context: PaneContext, active: boolean) {
  const { host, words, announce } = context;
  const { fault, run } = useHostTask(context);
  const [kept, setKept] = useState<KeptNotebook | null>(null);
  const [told, setTold] = useState<string | null>(null);
  const look = useCallback(
    () =>
      run(async () => {
        const found = host === null ? null : await findNotebook(host);
        setKept(found && { sheet: found.sheet, entries: readEntries(found.block) });
      }),
    [host, run],
  );
  useEffect(() => {
    if (active) void look();
  }, [active, look]);
  const tell = (sentence: string) => {
    setTold(sentence);
    announce(sentence);
  };
  /** Adds a line below the last, or starts a sheet; true when it was written. */
  const write = async (entry: NotebookEntry): Promise<boolean> => {
    let isWritten = false;
    await run(async () => {
      if (host === null) return;
      const found = await findNotebook(host);
      if (found === null) {
        const contents = notebookContents(words.language, [entry]);
        tell(words.notebook.written(await host.addSheet(words.notebook.sheetName, contents)));
        isWritten = true;
        return;
      }
      const { address, row } = nextLine(found.block, entry);
      const place = await host.read(found.sheet, address);
      const outcome = await host.insert(place, [row]);
      const where = `${found.sheet}!${address}`;
      isWritten = outcome === "written";
      tell(isWritten ? words.notebook.written(where) : words.notebook.notWritten(where));
    });
    await look();
    return isWritten;
  };
  return { kept, fault, told, write };
}
