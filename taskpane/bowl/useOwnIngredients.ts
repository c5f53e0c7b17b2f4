import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import { useHostTask } from "../components/useHostTask";
import type { SpreadsheetHost } from "../host";
import type { PaneContext } from "../view";
import { toMatrix } from "./cells";
import { findOwnIngredients, ROWS_SEARCHED, type OwnRange } from "./ownIngredients";

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
  // The latest wish, so that a slow reading does not undo it; undefined until one was made or found.
  const wish = useRef<OwnRange | null | undefined>(undefined);

  const refresh = useCallback(
    () =>
      run(async () => {
        const range = wish.current ?? null;
        const read = host === null || range === null ? null : await cellsOf(host, range);
        if (range !== (wish.current ?? null)) return;
        setChosen(range);
        // The same cells stay the same object, so that nothing is computed anew for them.
        setCells((known) => (JSON.stringify(known) === JSON.stringify(read) ? known : read));
      }),
    [host, run],
  );
  const choose = useCallback(
    (range: OwnRange | null) => {
      wish.current = range;
      return refresh();
    },
    [refresh],
  );
  const lookAgain = useCallback(
    () =>
      run(async () => {
        if (host === null) return;
        const found = findOwnIngredients(await host.readWorkbook({ mostRows: ROWS_SEARCHED }));
        const wanted = wish.current;
        if (wanted === undefined) wish.current = found[0];
        // A range that has grown or shrunk since is still the one that was wanted.
        else if (wanted !== null) wish.current = found.find(startsLike(wanted)) ?? wanted;
        await refresh();
        setRanges(found);
      }),
    [host, run, refresh],
  );
  useEffect(() => void lookAgain(), [lookAgain]);

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
