import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import type { CellBlock } from "../host";
import { isGone } from "../office/hostSentence";
import type { PaneContext } from "../view";
import { useHostTask } from "../components/useHostTask";

/** A block on the sheet, and which of its cells is selected. */
export interface FollowedBlock {
  readonly block: CellBlock;
  readonly active: { readonly row: number; readonly column: number } | null;
}

const PAUSE_MS = 120; // a walk with the arrow keys is read once, where it ends

/** The block around the selection, followed as it moves; a kept block is read anew where it lies. */
export function useFollowedBlock(context: PaneContext, active: boolean) {
  const { host, words, announce } = context;
  const { fault, run } = useHostTask(context);
  const [followed, setFollowed] = useState<FollowedBlock | null>(null);
  const [kept, setKept] = useState<FollowedBlock | null>(null);
  const [heldOnly, setHeldOnly] = useState(false);

  const read = useCallback(
    () =>
      run(async () => {
        if (host === null) return;
        if (kept !== null) {
          const { sheet, address } = kept.block;
          try {
            setFollowed({ block: await host.read(sheet, address), active: kept.active });
            return;
          } catch (error) {
            if (!isGone(error)) throw error;
            setKept(null);
            announce(words.keptGone(`${sheet}!${address}`));
          }
        }
        const { selected, around } = await host.readSelection();
        const place = { row: selected.top - around.top, column: selected.left - around.left };
        setFollowed({ block: around, active: place });
      }),
    [host, kept, run, words, announce],
  );

  const latest = useRef(read);
  latest.current = read;
  const staysInView = useRef(false);
  useEffect(() => {
    if (active && !staysInView.current) void read();
    staysInView.current = false;
  }, [active, read]);
  useEffect(() => {
    if (host === null || !active) return;
    let pause: ReturnType<typeof setTimeout> | undefined;
    let gone = false;
    let stop: (() => void) | null = null;
    void run(async () => {
      const unsubscribe = await host.onSelectionChanged(() => {
        clearTimeout(pause);
        pause = setTimeout(() => void latest.current(), PAUSE_MS);
      });
      if (gone) unsubscribe();
      else stop = unsubscribe;
    });
    return () => {
      gone = true;
      clearTimeout(pause);
      stop?.();
    };
  }, [host, active, run]);

  return {
    followed,
    fault,
    read,
    isKept: kept !== null,
    keep: (on: boolean) => {
      setHeldOnly(false);
      setKept(on ? followed : null);
    },
    /**
     * Keeps the block for as long as something needs it, without touching what the user asked to keep. Let go,
     * it stays in view until the selection moves again: the focus is about to come back into it.
     */
    hold: (on: boolean) => {
      if (on && kept === null) {
        setHeldOnly(true);
        setKept(followed);
      }
      if (!on && heldOnly) {
        setHeldOnly(false);
        setKept(null);
        staysInView.current = true;
      }
    },
  };
}
