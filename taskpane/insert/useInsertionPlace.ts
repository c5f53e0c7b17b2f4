import { useCallback, useEffect, useState } from "preact/hooks";
import { useHostTask } from "../components/useHostTask";
import type { CellBlock } from "../host";
import type { PaneContext } from "../view";

/** The cell that an insertion would fill, read anew whenever the selection moves. */
export function useInsertionPlace(context: PaneContext) {
  const { host } = context;
  const { fault, run } = useHostTask(context);
  const [place, setPlace] = useState<CellBlock | null>(null);
  const look = useCallback(
    () =>
      run(async () => {
        if (host !== null) setPlace(await host.cellsFromSelection(1, 1));
      }),
    [host, run],
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
