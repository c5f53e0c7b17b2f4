import { useRef, useState } from "preact/hooks";

/** What a workbook keeps of the user's words of one kind. */
export interface Kept<Entry> {
  /** The sheet they are kept on; null when the workbook has none. */
  readonly sheet: string | null;
  readonly entries: readonly Entry[];
}

const asOne = (entries: readonly unknown[]): string =>
  JSON.stringify(entries.map((entry) => JSON.stringify(entry)).sort());

/** What the user said: kept in the workbook, or in this sitting only. `keyOf` tells what an entry is about. */
export function useKept<Entry>(keyOf: (entry: Entry) => string) {
  // Refs, since whoever says something and has the workbook read at once is to be read with it.
  const stored = useRef<Kept<Entry>>({ sheet: null, entries: [] });
  const now = useRef<readonly Entry[]>([]);
  const touched = useRef(new Set<string>()); // said or taken back here, and not kept yet
  const [, draw] = useState({});
  const change = (next: readonly Entry[]) => {
    now.current = next;
    draw({});
  };
  const without = (key: string) => {
    touched.current.add(key);
    return now.current.filter((entry) => keyOf(entry) !== key);
  };
  return {
    now: now.current,
    sheet: stored.current.sheet,
    isStored: asOne(stored.current.entries) === asOne(now.current),
    put: (entry: Entry) => change([...without(keyOf(entry)), entry]),
    remove: (key: string) => change(without(key)),
    /** A new reading: what the workbook keeps by now, but for what was said or taken back here since. */
    onRead: (found: Kept<Entry>): readonly Entry[] => {
      const isTouched = (entry: Entry) => touched.current.has(keyOf(entry));
      stored.current = found;
      change([
        ...found.entries.filter((entry) => !isTouched(entry)),
        ...now.current.filter(isTouched),
      ]);
      return now.current;
    },
    onStored: (sheet: string) => {
      stored.current = { sheet, entries: now.current };
      touched.current.clear();
      draw({});
    },
  };
}
