import { useCallback, useEffect, useState } from "preact/hooks";
import { useHostTask } from "../components/useHostTask";
import type { CellBlock } from "../host";
import type { PaneContext } from "../view";

/** The cells that an insertion would fill from the selection, read anew whenever that moves. */
export function useInsertionPlace(context: PaneContext, rowCount = 1, columnCount = 1) {
  const { host } = context;
  const { fault, run } = useHostTask(context);
  const [place, setPlace] = useState<CellBlock | null>(null);
  const look = useCallback(
    () =>
      run(async () => {
        if (host !== null) setPlace(await host.cellsFromSelection(rowCount, columnCount));
      }),
    [host, run, rowCount, columnCount],
  );
  useEffect(() => {
    let stop: (() => void) | null = null;
    let gone = false;
    void look();
    void run(async () => {
      const unsubscribe = await host?.onSelectionChanged(() => void look());
      if (unsubscribe === undefined) return;
      if (gone) unsubscribe();
      else stop = unsubscribe;
    });
    return () => {
      gone = true;
      stop?.();
    };
  }, [host, look, run]);
  return { place, fault, look, run };
}
