import { useEffect, useRef, useState } from "preact/hooks";
import { InsertPanel } from "../insert/InsertPanel";
import { RowInsert } from "../insert/RowInsert";
import type { PaneContext } from "../view";
import type { LarderEntry } from "./entries";

interface EntryHeaderProps {
  readonly context: PaneContext;
  readonly active: boolean;
  readonly entry: LarderEntry;
  readonly onBack: () => void;
  readonly onCompare: () => void;
}

/** What the entry is called, the way back and to comparing, and its name or a row with it into the sheet. */
export function EntryHeader(props: EntryHeaderProps) {
  const { context, active, entry, onBack, onCompare } = props;
  const { words, host } = context;
  const [inserting, setInserting] = useState<"name" | "row" | null>(null);
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
        <button type="button" class="small" onClick={onCompare}>
          {words.larder.compare.open}
        </button>
        {host !== null &&
          (["name", "row"] as const).map((what) => (
            <button
              key={what}
              type="button"
              class="small"
              aria-expanded={inserting === what}
              onClick={() => setInserting(inserting === what ? null : what)}
            >
              {what === "name" ? words.insert.nameOpen : words.larder.row.open}
            </button>
          ))}
      </div>
      {inserting === "name" && (
        <InsertPanel
          context={context}
          title={words.insert.name}
          offers={[{ label: words.insert.name, content: name }]}
          onClose={() => setInserting(null)}
        />
      )}
      {inserting === "row" && (
        <RowInsert
          context={context}
          active={active}
          name={name}
          onClose={() => setInserting(null)}
        />
      )}
      <h2 tabIndex={-1} ref={heading}>
        {name}
      </h2>
      {others.length > 0 && <p class="quiet">{words.alsoCalled(others.join(", "))}</p>}
    </header>
  );
}
