import type { PaneContext } from "../view";
import type { NotebookEntry } from "./entry";
import { freezerOffset } from "./freezerOffset";

interface FreezerOffsetProps {
  readonly context: PaneContext;
  readonly entries: readonly NotebookEntry[];
}

/** How much warmer the freezer is than its dial says, by all readings of the notebook. */
export function FreezerOffset({ context, entries }: FreezerOffsetProps) {
  const { words, numbers } = context;
  const texts = words.notebook;
  const found = freezerOffset(entries);
  if (found === null) return null;
  const { offsetK, uncertaintyK, readings } = found;
  const offset =
    uncertaintyK === null || uncertaintyK === 0
      ? `${numbers.fixed(offsetK, 1)} K`
      : numbers.withBand(offsetK, uncertaintyK, "K");
  return (
    <p>
      {texts.offset(offset, readings)} {uncertaintyK === null ? texts.offsetOnce : texts.offsetUse}
    </p>
  );
}
