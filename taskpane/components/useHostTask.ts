import { useCallback, useState } from "preact/hooks";
import type { PaneContext } from "../view";
import { hostSentence } from "../office/hostSentence";

/** Runs what talks to the spreadsheet; a failure becomes one sentence to show, and is read out. */
export function useHostTask({ words, announce }: PaneContext) {
  const [fault, setFault] = useState<string | null>(null);
  const run = useCallback(
    async (task: () => Promise<void>): Promise<void> => {
      try {
        await task();
        setFault(null);
      } catch (error) {
        const sentence = hostSentence(error, words);
        setFault(sentence);
        announce(sentence);
      }
    },
    [words, announce],
  );
  return { fault, run };
}
