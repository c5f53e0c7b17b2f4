import { useCallback, useEffect, useState } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import { useHostTask } from "../components/useHostTask";
import type { SpreadsheetHost } from "../host";
import type { PaneContext } from "../view";
import { toMatrix } from "./cells";
import { findOwnIngredients, ROWS_SEARCHED, type OwnRange } from "./ownIngredients";

export const sameRange = (one: OwnRange | null, other: OwnRange | null): boolean =>
  one?.sheet === other?.sheet && one?.address === other?.address;

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

  const choose = useCallback(
    (range: OwnRange | null) =>
      run(async () => {
        setChosen(range);
        const read = host === null || range === null ? null : await cellsOf(host, range);
        // The same cells stay the same object, so that nothing is computed anew for them.
        setCells((known) => (JSON.stringify(known) === JSON.stringify(read) ? known : read));
      }),
    [host, run],
  );
  const look = useCallback(
    (wanted: OwnRange | null) =>
      run(async () => {
        if (host === null) return;
        const found = findOwnIngredients(await host.readWorkbook({ mostRows: ROWS_SEARCHED }));
        const kept = found.find((range) => sameRange(range, wanted));
        await choose(wanted === null ? (found[0] ?? null) : (kept ?? wanted));
        setRanges(found);
      }),
    [host, run, choose],
  );
  useEffect(() => void look(null), [look]);

  return {
    /** Null until the workbook has been looked through. */
    ranges,
    chosen,
    cells,
    fault,
    choose,
    /** Reads the chosen range anew: its cells may have changed. */
    refresh: useCallback(() => choose(chosen), [choose, chosen]),
    lookAgain: () => look(chosen),
  };
}
