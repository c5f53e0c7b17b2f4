import { useState } from "preact/hooks";
import type { PaneContext } from "../view";
import { entryKey, type LarderEntry } from "./entries";
import type { Hit } from "./searchEntries";

interface HitListProps {
  readonly context: PaneContext;
  readonly hits: readonly Hit[];
  readonly onOpen: (entry: LarderEntry) => void;
}

const PAGE = 40;

/** Up and down arrows walk the list, as in any list; Tab leaves it. */
function walk(event: KeyboardEvent): void {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (step === undefined || !(event.currentTarget instanceof HTMLElement)) return;
  const buttons = [...event.currentTarget.querySelectorAll<HTMLElement>("button.hit")];
  const at = buttons.findIndex((button) => button === document.activeElement);
  buttons[at + step]?.focus();
  event.preventDefault();
}

/** What a search found, a page at a time. */
export function HitList({ context, hits, onOpen }: HitListProps) {
  const { words } = context;
  const [pages, setPages] = useState(1);
  const shown = hits.slice(0, pages * PAGE);
  return (
    <>
      <ul class="hits" onKeyDown={walk}>
        {shown.map(({ entry, foundAs }) => (
          <li key={entryKey(entry)}>
            <button type="button" class="hit" onClick={() => onOpen(entry)}>
              <span class="hit-name">{entry.item.name}</span>
              {foundAs !== null && <span class="hit-alias">{foundAs}</span>}
              <span class={`hit-kind hit-${entry.kind}`}>
                {entry.kind === "solute" ? words.soluteMark : words.groups[entry.item.group]}
              </span>
            </button>
          </li>
        ))}
      </ul>
      {shown.length < hits.length && (
        <button type="button" onClick={() => setPages(pages + 1)}>
          {words.showMore(hits.length - shown.length)}
        </button>
      )}
    </>
  );
}
