import { useRef, useState } from "preact/hooks";
import type { PaneContext } from "../view";
import type { InsertOffer } from "./insertOffer";
import { InsertPreview } from "./InsertPreview";
import { OfferChoice } from "./OfferChoice";
import { placeText, useInsertion } from "./useInsertion";
import "./insertPanel.css";

interface InsertPanelProps {
  readonly context: PaneContext;
  /** What is being inserted, for the panel's name. */
  readonly title: string;
  /** At least one; the first is chosen. */
  readonly offers: readonly InsertOffer[];
  readonly onClose: () => void;
}

/** Shows what would go where and writes it on a click; a filled cell needs a second, explicit click. */
export function InsertPanel({ context, title, offers, onClose }: InsertPanelProps) {
  const { words } = context;
  const opener = useRef(document.activeElement);
  const [index, setIndex] = useState(0);
  const chosen = offers[index] ?? offers[0];
  const insertion = useInsertion(context, chosen?.content ?? "");
  const { place, sentence } = insertion;
  if (chosen === undefined) return null;
  const choose = (next: number) => {
    setIndex(next);
    insertion.startOver();
  };
  const close = () => {
    // Back to where one came from, not to the top of the page.
    if (opener.current instanceof HTMLElement) opener.current.focus();
    onClose();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Escape") return;
    event.stopPropagation(); // it closes the panel, not what lies around it
    close();
  };
  return (
    <div class="insert" role="group" aria-label={words.insert.title(title)} onKeyDown={onKeyDown}>
      <OfferChoice offers={offers} chosen={chosen} onChoose={choose} />
      {place !== null && <InsertPreview words={words} place={place} offer={chosen} />}
      {sentence !== null && <p class="insert-outcome">{sentence}</p>}
      <div class="buttons">
        <button
          type="button"
          class="primary"
          disabled={place === null}
          onClick={() => void insertion.write()}
        >
          {words.insert.write}
        </button>
        {place !== null && insertion.asksToReplace && (
          // A button of its own: a key held down on the first one must not overwrite anything.
          <button type="button" class="danger" onClick={() => void insertion.replace()}>
            {words.insert.replace(placeText(place))}
          </button>
        )}
        <button type="button" onClick={close}>
          {words.close}
        </button>
      </div>
    </div>
  );
}
