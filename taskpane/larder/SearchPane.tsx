import type { ComponentChildren } from "preact";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { PaneContext } from "../view";
import { larderEntries, type LarderEntry } from "./entries";
import { HitList } from "./HitList";
import { searchEntries } from "./searchEntries";

interface SearchPaneProps {
  readonly context: PaneContext;
  readonly typed: string;
  readonly onType: (typed: string) => void;
  readonly onOpen: (entry: LarderEntry) => void;
  /** True when one comes back to it from somewhere in the larder: the field then takes the focus. */
  readonly takesFocus: boolean;
  /** What stands beside the number of hits. */
  readonly children?: ComponentChildren;
}

/** The search as one types, and what it found. */
export function SearchPane(props: SearchPaneProps) {
  const { context, typed, onType, onOpen, takesFocus, children } = props;
  const { words } = context;
  const field = useRef<HTMLInputElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const hits = useMemo(() => searchEntries(larderEntries, typed), [typed]);
  useEffect(() => {
    if (takesFocus) field.current?.focus();
  }, [takesFocus]);
  const toFirstHit = (event: KeyboardEvent) => {
    if (event.key !== "ArrowDown") return;
    event.preventDefault();
    list.current?.querySelector<HTMLElement>("button.hit")?.focus();
  };
  return (
    <>
      <label class="search">
        <span>{words.searchLabel}</span>
        <input
          ref={field}
          type="search"
          value={typed}
          placeholder={words.searchExample}
          autocomplete="off"
          spellcheck={false}
          onKeyDown={toFirstHit}
          onInput={(event) => onType(event.currentTarget.value)}
        />
      </label>
      <div class="found">
        <p class="quiet" role="status">
          {hits.length === 0 ? words.nothingFound(typed) : words.found(hits.length)}
        </p>
        {children}
      </div>
      <div ref={list}>
        <HitList key={typed} context={context} hits={hits} onOpen={onOpen} />
      </div>
    </>
  );
}
