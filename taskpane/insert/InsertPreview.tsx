import type { CellBlock } from "../host";
import type { Words } from "../words/words";
import type { InsertOffer } from "./insertOffer";
import { placeText } from "./useInsertion";

interface InsertPreviewProps {
  readonly words: Words;
  readonly place: CellBlock;
  readonly offer: InsertOffer;
}

/** Which cell, what stands in it now, and what would stand in it then. */
export function InsertPreview({ words, place, offer }: InsertPreviewProps) {
  const now = String(place.formulas[0]?.[0] ?? "");
  return (
    <dl class="insert-preview">
      <dt>{words.insert.cell}</dt>
      <dd>{placeText(place)}</dd>
      <dt>{words.insert.now}</dt>
      <dd>{now === "" ? words.insert.empty : now}</dd>
      <dt>{words.insert.then}</dt>
      <dd>
        <code>{String(offer.content)}</code>
        {offer.shows !== undefined && <> → {offer.shows}</>}
      </dd>
    </dl>
  );
}
