import { useEffect, useState } from "preact/hooks";
import type { RecognisedRecipe } from "../bowl/recognised";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import { readPrices } from "./priceColumn";

/** Prices of 1 kg beside the recipe, read when the cost is asked for; null while there are none. */
export function usePrices(context: PaneContext, recipe: RecognisedRecipe, asks: boolean) {
  const { host } = context;
  const { fault, run } = useHostTask(context);
  const [prices, setPrices] = useState<readonly (number | null)[] | null>(null);
  useEffect(() => {
    if (host === null || !asks) return;
    let isCurrent = true;
    void run(async () => {
      const found = await readPrices(host, recipe);
      if (isCurrent) setPrices(found);
    });
    return () => {
      isCurrent = false;
    };
  }, [host, run, recipe, asks]);
  return { prices, fault };
}
