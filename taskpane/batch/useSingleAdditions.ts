import { useEffect, useState } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import type { MixRow } from "../bowl/askMix";
import { inSlices } from "../reading/inSlices";
import { singleAdditions, type OneAddition } from "./rescue";

interface Found {
  /** What the answer is about. */
  readonly about: string;
  readonly ones: readonly OneAddition[] | null;
  readonly done: number;
}

/** What one ingredient alone can mend, worked out between two drawings; a change begins it anew. */
export function useSingleAdditions(
  inBowl: readonly MixRow[],
  pointC: number | null,
  own: Matrix | null,
) {
  const about = JSON.stringify([inBowl, pointC, own]);
  const [found, setFound] = useState<Found>({ about: "", ones: null, done: 0 });
  useEffect(() => {
    if (pointC === null || inBowl.length === 0) return;
    const stop = new AbortController();
    const names = inBowl.map(({ name }) => name);
    const steps = singleAdditions(inBowl, pointC, names, own);
    inSlices(steps, (done) => setFound({ about, ones: null, done }), stop.signal)
      .then((ones) => setFound({ about, ones, done: names.length }))
      .catch((error: unknown) => {
        if (!stop.signal.aborted) throw error; // else something newer is being worked out
      });
    return () => stop.abort();
  }, [about]);
  return found.about === about ? found : { ones: null, done: 0 };
}
