import { useState } from "preact/hooks";
import type { CellBlock } from "../host";
import type { PaneContext } from "../view";
import { useInsertionPlace } from "./useInsertionPlace";

export const placeText = ({ sheet, address }: CellBlock): string => `${sheet}!${address}`;

/** Writing into the selected cell: once when it is empty, and after a second leave when it is not. */
export function useInsertion(context: PaneContext, content: string | number) {
  const { words, host, announce } = context;
  const { place, fault, look, run } = useInsertionPlace(context);
  const [outcome, setOutcome] = useState<string | null>(null);
  // The leave to overwrite holds for the one cell it was asked for.
  const [askedAt, setAskedAt] = useState<string | null>(null);

  const write = (target: CellBlock, overwrite: boolean) =>
    run(async () => {
      if (host === null) return;
      const answer = await host.insert(target, [[content]], { overwrite });
      const key = { written: "done", filled: "filled", "changed meanwhile": "changed" } as const;
      const sentence = words.insert[key[answer]](placeText(target));
      setOutcome(sentence);
      announce(sentence);
      setAskedAt(answer === "filled" ? placeText(target) : null);
      await look();
    });
  return {
    place,
    sentence: fault ?? outcome,
    asksToReplace: place !== null && askedAt === placeText(place),
    write: () => (place === null ? Promise.resolve() : write(place, false)),
    replace: () => (place === null ? Promise.resolve() : write(place, true)),
    startOver: () => {
      setAskedAt(null);
      setOutcome(null);
    },
  };
}
