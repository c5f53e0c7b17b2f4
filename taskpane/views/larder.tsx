import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { EntryHeader } from "../larder/EntryHeader";
import { entryKey, larderEntries, type LarderEntry } from "../larder/entries";
import { HitList } from "../larder/HitList";
import { IngredientEntry } from "../larder/IngredientEntry";
import { searchEntries } from "../larder/searchEntries";
import { SoluteEntry } from "../larder/SoluteEntry";
import type { View, ViewProps } from "../view";
import "../larder/larder.css";

/** The catalogue: search as you type, an entry's figures with their sources, and their way into a cell. */
function Larder({ context }: ViewProps) {
  const { words } = context;
  const [typed, setTyped] = useState("");
  const [open, setOpen] = useState<LarderEntry | null>(null);
  const search = useRef<HTMLInputElement>(null);
  const returning = useRef(false);
  const hits = useMemo(() => searchEntries(larderEntries, typed), [typed]);
  useEffect(() => {
    if (open === null && returning.current) search.current?.focus();
    returning.current = open !== null;
  }, [open]);

  if (open !== null) {
    const back = () => setOpen(null);
    return (
      <article
        class="entry"
        onKeyDown={(event) => {
          if (event.key === "Escape") back();
        }}
      >
        <EntryHeader key={entryKey(open)} context={context} entry={open} onBack={back} />
        {open.kind === "solute" ? (
          <SoluteEntry context={context} solute={open.item} />
        ) : (
          <IngredientEntry context={context} ingredient={open.item} />
        )}
      </article>
    );
  }
  return (
    <>
      <label class="search">
        <span>{words.searchLabel}</span>
        <input
          ref={search}
          type="search"
          value={typed}
          placeholder={words.searchExample}
          autocomplete="off"
          spellcheck={false}
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
      </label>
      <p class="quiet" role="status">
        {hits.length === 0 ? words.nothingFound(typed) : words.found(hits.length)}
      </p>
      <HitList key={typed} context={context} hits={hits} onOpen={setOpen} />
    </>
  );
}

export const larder: View = { key: "larder", Content: Larder };
