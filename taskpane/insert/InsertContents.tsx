import { useState } from "preact/hooks";
import { FormButtons } from "../components/FormButtons";
import type { PaneContext } from "../view";
import type { InsertOffer } from "./insertOffer";
import { InsertPreview } from "./InsertPreview";
import { OfferChoice } from "./OfferChoice";
import { placeText, useInsertion } from "./useInsertion";

interface InsertContentsProps {
  readonly context: PaneContext;
  /** At least one; the first is chosen. */
  readonly offers: readonly InsertOffer[];
  readonly onClose: () => void;
}

/** Shows what would go where and writes it on a click; a filled cell needs a second, explicit click. */
export function InsertContents({ context, offers, onClose }: InsertContentsProps) {
  const { words } = context;
  const [index, setIndex] = useState(0);
  const chosen = offers[index] ?? offers[0];
  const insertion = useInsertion(context, chosen?.content ?? "");
  const { place, sentence } = insertion;
  if (chosen === undefined) return null;
  const choose = (next: number) => {
    setIndex(next);
    insertion.startOver();
  };
  return (
    <>
      <OfferChoice offers={offers} chosen={chosen} onChoose={choose} />
      {place !== null && <InsertPreview words={words} place={place} offer={chosen} />}
      {sentence !== null && <p class="insert-outcome">{sentence}</p>}
      <FormButtons
        label={words.insert.write}
        closeLabel={words.close}
        isReady={place !== null}
        onDo={() => void insertion.write()}
        onClose={onClose}
      >
        {place !== null && insertion.asksToReplace && (
          // A button of its own: a key held down on the first one must not overwrite anything.
          <button type="button" class="danger" onClick={() => void insertion.replace()}>
            {words.insert.replace(placeText(place))}
          </button>
        )}
      </FormButtons>
    </>
  );
}
