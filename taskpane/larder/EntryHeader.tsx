import { useEffect, useRef, useState } from "preact/hooks";
import { InsertPanel } from "../insert/InsertPanel";
import type { PaneContext } from "../view";
import type { LarderEntry } from "./entries";

interface EntryHeaderProps {
  readonly context: PaneContext;
  readonly entry: LarderEntry;
  readonly onBack: () => void;
}

/** What the entry is called, the way back, and its name into a cell. */
export function EntryHeader({ context, entry, onBack }: EntryHeaderProps) {
  const { words, host } = context;
  const [inserting, setInserting] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), [entry]);
  const { name, aliases } = entry.item;
  const others = [...aliases.en, ...aliases.de];
  return (
    <header class="entry-header">
      <div class="buttons">
        <button type="button" class="small" onClick={onBack}>
          ← {words.back}
        </button>
        {host !== null && (
          <button
            type="button"
            class="small"
            aria-expanded={inserting}
            onClick={() => setInserting(!inserting)}
          >
            {words.insert.nameOpen}
          </button>
        )}
      </div>
      {inserting && (
        <InsertPanel
          context={context}
          title={words.insert.name}
          offers={[{ label: words.insert.name, content: name }]}
          onClose={() => setInserting(false)}
        />
      )}
      <h2 tabIndex={-1} ref={heading}>
        {name}
      </h2>
      {others.length > 0 && <p class="quiet">{words.alsoCalled(others.join(", "))}</p>}
    </header>
  );
}
