import { useCallback, useRef, useState } from "preact/hooks";
import { hostSentence } from "../office/hostSentence";
import type { PaneContext } from "../view";

interface Fault {
  readonly sentence: string;
  /** How many tasks had begun when it happened. */
  readonly begun: number;
}

/** Runs what talks to the spreadsheet; a failure becomes one sentence to show, and is read out. */
export function useHostTask({ words, announce }: PaneContext) {
  const [fault, setFault] = useState<Fault | null>(null);
  const begun = useRef(0);
  const run = useCallback(
    async (task: () => Promise<void>): Promise<void> => {
      const turn = (begun.current += 1);
      try {
        await task();
        // Only a task that began after the failure shows that it is over.
        setFault((known) => (known !== null && known.begun >= turn ? known : null));
      } catch (error) {
        const sentence = hostSentence(error, words);
        setFault({ sentence, begun: begun.current });
        announce(sentence);
      }
    },
    [words, announce],
  );
  return { fault: fault?.sentence ?? null, run };
}
