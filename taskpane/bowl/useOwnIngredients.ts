import { useCallback, useEffect, useState } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import { refreshAims, takeAims } from "../aims/lookForAims";
import { useStore } from "../components/store";
import { useHostTask } from "../components/useHostTask";
import type { SpreadsheetHost } from "../host";
import { isGone } from "../office/hostSentence";
import type { PaneContext } from "../view";
import { toMatrix } from "./cells";
import { ROWS_SEARCHED } from "./headedRanges";
import { isOwnHeader, type OwnRange } from "./ownIngredients";
import { ownAfterLook } from "./ownState";

const headersOf = ([first = []]: Matrix): readonly string[] =>
  first.map((cell) => (typeof cell === "string" ? cell.trim().toLowerCase() : ""));

interface Taken {
  readonly range: OwnRange | null;
  readonly cells: Matrix | null;
}

/** The workbook's ranges of own ingredients, looked for once for all views and when asked, and the cells of the one that counts. */
export function useOwnIngredients(context: PaneContext, looksAnew = false) {
  const { host, words, announce } = context;
  const { own: store, aims } = context.shared;
  const { fault, run } = useHostTask(context);
  const { ranges, gone } = useStore(store);
  const [taken, setTaken] = useState<Taken | null>(null);

  /** The cells that count, unless another range was chosen while they were read. */
  const take = useCallback(
    async (from: SpreadsheetHost): Promise<Matrix | null> => {
      const range = store.now().range ?? null;
      const read = range && toMatrix((await from.read(range.sheet, range.address)).values);
      if (range !== (store.now().range ?? null)) return null;
      // The same cells stay the same object, so that nothing is computed anew for them.
      setTaken((known) =>
        JSON.stringify(known?.cells) === JSON.stringify(read)
          ? { range, cells: known?.cells ?? null }
          : { range, cells: read },
      );
      return read;
    },
    [store],
  );
  const look = useCallback(
    async (from: SpreadsheetHost) => {
      const workbook = await from.readWorkbook({ mostRows: ROWS_SEARCHED });
      await takeAims(from, aims, workbook);
      const before = store.now();
      const next = ownAfterLook(before, workbook);
      store.set(next);
      if (next.gone !== null && next.gone !== before.gone) {
        announce(words.own.gone(next.gone, next.range ?? null));
      }
    },
    [store, aims, announce, words],
  );
  const lookAgain = useCallback(
    () =>
      run(async () => {
        if (host !== null) await look(host);
      }),
    [host, run, look],
  );
  const refresh = useCallback(
    () =>
      run(async () => {
        if (host === null || store.now().ranges === null) return;
        try {
          await refreshAims(host, aims);
          const cells = await take(host);
          if (cells === null || store.now().isChosen || isOwnHeader(headersOf(cells))) return;
        } catch (error) {
          if (!isGone(error)) throw error;
        }
        await look(host); // another workbook was opened, or a sheet taken away
      }),
    [host, run, take, look, store, aims],
  );
  const choose = useCallback(
    (range: OwnRange | null) => store.set({ ...store.now(), range, isChosen: true, gone: null }),
    [store],
  );
  useEffect(() => {
    const follow = async () => {
      if (host !== null) await take(host);
    };
    return store.follow(() => void run(follow));
  }, [store, run, host, take]);
  useEffect(() => {
    void (looksAnew || store.now().ranges === null ? lookAgain() : refresh());
  }, [looksAnew, store, lookAgain, refresh]);

  return {
    /** Null until the workbook has been looked through, and the range that counts been read. */
    ranges: taken === null ? null : ranges,
    chosen: taken?.range ?? null,
    cells: taken?.cells ?? null,
    gone,
    fault,
    choose,
    /** Reads the chosen range anew: its cells may have changed, or be gone. */
    refresh,
    lookAgain,
  };
}
