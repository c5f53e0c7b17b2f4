import type { ComponentChildren } from "preact";
import { useRef, useState } from "preact/hooks";
import { Comparison } from "../larder/Comparison";
import { EntryHeader } from "../larder/EntryHeader";
import { entryKey, type LarderEntry } from "../larder/entries";
import { IngredientEntry } from "../larder/IngredientEntry";
import { LaterForm } from "../larder/LaterForm";
import { SearchPane } from "../larder/SearchPane";
import { SoluteEntry } from "../larder/SoluteEntry";
import type { View, ViewProps } from "../view";
import "../larder/larder.css";

/** What of the larder is in front. */
type Shown =
  | { readonly kind: "search" }
  | { readonly kind: "entry"; readonly entry: LarderEntry }
  /** The search once more, for the entry to compare with. */
  | { readonly kind: "choose"; readonly entry: LarderEntry }
  | { readonly kind: "compare"; readonly one: LarderEntry; readonly other: LarderEntry }
  | { readonly kind: "label" };

/** The catalogue: search as you type, figures with their sources, two compared, and one's own from a label. */
function Larder({ context, active }: ViewProps) {
  const { words } = context;
  const texts = words.larder;
  const [typed, setTyped] = useState("");
  const [shown, setShown] = useState<Shown>({ kind: "search" });
  const wasElsewhere = useRef(false);
  const show = (next: Shown) => {
    wasElsewhere.current = true;
    setShown(next);
  };
  const search = () => show({ kind: "search" });
  const open = (entry: LarderEntry) => show({ kind: "entry", entry });
  const back = () => (shown.kind === "choose" ? open(shown.entry) : search());
  const find = (onOpen: (entry: LarderEntry) => void, beside?: ComponentChildren) => (
    <SearchPane
      key={shown.kind}
      context={context}
      typed={typed}
      onType={setTyped}
      onOpen={onOpen}
      takesFocus={wasElsewhere.current}
    >
      {beside}
    </SearchPane>
  );
  const content = () => {
    switch (shown.kind) {
      case "search":
        return find(
          open,
          <button type="button" class="small" onClick={() => show({ kind: "label" })}>
            {texts.label.open}
          </button>,
        );
      case "choose": {
        const { entry } = shown;
        return (
          <>
            <div class="choosing">
              <p>{texts.compare.choose(entry.item.name)}</p>
              <button type="button" class="small" onClick={back}>
                {texts.compare.cancel}
              </button>
            </div>
            {find((other) => show({ kind: "compare", one: entry, other }))}
          </>
        );
      }
      case "compare":
        return <Comparison context={context} {...shown} onOpen={open} onBack={search} />;
      case "label":
        return <LaterForm context={context} onBack={search} />;
      case "entry":
        return (
          <>
            <EntryHeader
              key={entryKey(shown.entry)}
              context={context}
              active={active}
              entry={shown.entry}
              onBack={search}
              onCompare={() => {
                setTyped("");
                show({ kind: "choose", entry: shown.entry });
              }}
            />
            {shown.entry.kind === "solute" ? (
              <SoluteEntry context={context} solute={shown.entry.item} />
            ) : (
              <IngredientEntry context={context} ingredient={shown.entry.item} />
            )}
          </>
        );
    }
  };
  return (
    <div
      onKeyDown={(event) => {
        if (event.key === "Escape" && shown.kind !== "search") back();
      }}
    >
      {content()}
    </div>
  );
}

export const larder: View = { key: "larder", Content: Larder };
