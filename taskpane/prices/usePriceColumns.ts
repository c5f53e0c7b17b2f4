import { useEffect, useState } from "preact/hooks";
import type { RecognisedRecipe } from "../bowl/recognised";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import { readPriceColumns, type PriceColumn } from "./readPriceColumns";

/** The columns of prices beside the recipe, read when they are asked for; none until then. */
export function usePriceColumns(context: PaneContext, recipe: RecognisedRecipe, asks: boolean) {
  const { host } = context;
  const { fault, run } = useHostTask(context);
  const [columns, setColumns] = useState<readonly PriceColumn[]>([]);
  useEffect(() => {
    if (host === null || !asks) return;
    let isCurrent = true;
    void run(async () => {
      const found = await readPriceColumns(host, recipe);
      if (isCurrent) setColumns(found);
    });
    return () => {
      isCurrent = false;
    };
  }, [host, run, recipe, asks]);
  return { columns, fault };
}
