import { useId } from "preact/hooks";
import type { InsertOffer } from "./insertOffer";

interface OfferChoiceProps {
  readonly offers: readonly InsertOffer[];
  readonly chosen: InsertOffer;
  readonly onChoose: (index: number) => void;
}

/** Value or formula: which of the offers is to be written. */
export function OfferChoice({ offers, chosen, onChoose }: OfferChoiceProps) {
  const group = useId();
  return (
    <div class="insert-offers">
      {offers.map((offer, index) => (
        <label key={offer.label}>
          <input
            type="radio"
            name={group}
            checked={offer === chosen}
            onChange={() => onChoose(index)}
          />
          {offer.label}
        </label>
      ))}
    </div>
  );
}
