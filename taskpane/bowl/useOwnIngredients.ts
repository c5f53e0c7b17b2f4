import { useCallback, useEffect, useState } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import { useHostTask } from "../components/useHostTask";
import type { SpreadsheetHost } from "../host";
import type { PaneContext } from "../view";
import { refreshAims, takeAims } from "../aims/lookForAims";
import { toMatrix } from "./cells";
import { ROWS_SEARCHED } from "./headedRanges";
import { findOwnIngredients, type OwnRange } from "./ownIngredients";

export const sameRange = (one: OwnRange | null, other: OwnRange | null): boolean =>
  one?.sheet === other?.sheet && one?.address === other?.address;

const startsLike =
  (wanted: OwnRange) =>
  ({ sheet, address }: OwnRange): boolean =>
    sheet === wanted.sheet && address.split(":")[0] === wanted.address.split(":")[0];

const cellsOf = async (host: SpreadsheetHost, { sheet, address }: OwnRange): Promise<Matrix> =>
  toMatrix((await host.read(sheet, address)).values);

/**
 * The workbook's ranges of own ingredients, looked for once and when asked, and the cells of the chosen
 * one. The first is taken until the user takes another or none.
 */
export function useOwnIngredients(context: PaneContext) {
  const { host } = context;
  const { fault, run } = useHostTask(context);
  const [ranges, setRanges] = useState<readonly OwnRange[] | null>(null);
  const [chosen, setChosen] = useState<OwnRange | null>(null);
  const [cells, setCells] = useState<Matrix | null>(null);
  // The latest wish of any view, so that a slow reading does not undo it.
  const { ownRange: wish, aims } = context.shared;

  const refresh = useCallback(
    () =>
      run(async () => {
        const range = wish.now() ?? null;
        if (host !== null) await refreshAims(host, aims);
        const read = host === null || range === null ? null : await cellsOf(host, range);
        if (range !== (wish.now() ?? null)) return;
        setChosen(range);
        // The same cells stay the same object, so that nothing is computed anew for them.
        setCells((known) => (JSON.stringify(known) === JSON.stringify(read) ? known : read));
      }),
    [host, run],
  );
  const choose = useCallback(
    (range: OwnRange | null) => {
      wish.set(range);
      return refresh();
    },
    [wish, refresh],
  );
  const lookAgain = useCallback(
    () =>
      run(async () => {
        if (host === null) return;
        const workbook = await host.readWorkbook({ mostRows: ROWS_SEARCHED });
        await takeAims(host, aims, workbook);
        const found = findOwnIngredients(workbook);
        const wanted = wish.now();
        if (wanted === undefined) wish.set(found[0]);
        // A range that has grown or shrunk since is still the one that was wanted, unless its sheet is gone.
        else if (wanted !== null) {
          const isThere = workbook.sheets.some(({ name }) => name === wanted.sheet);
          wish.set(found.find(startsLike(wanted)) ?? (isThere ? wanted : found[0]));
        }
        await refresh();
        setRanges(found);
      }),
    [host, run, refresh, wish, aims],
  );
  useEffect(() => void lookAgain(), [lookAgain]);
  useEffect(() => wish.follow(() => void refresh()), [wish, refresh]);

  return {
    /** Null until the workbook has been looked through. */
    ranges,
    chosen,
    cells,
    fault,
    choose,
    /** Reads the chosen range anew: its cells may have changed. */
    refresh,
    lookAgain,
  };
}
