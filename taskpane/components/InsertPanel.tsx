import { useState } from "preact/hooks";
import type { CellBlock } from "../host";
import type { PaneContext } from "../view";
import { useInsertionPlace } from "./useInsertionPlace";
import "./insertPanel.css";

/** One thing that can be written into a cell. */
export interface InsertOffer {
  readonly label: string;
  readonly content: string | number;
  /** What the cell will show, when that is not the content itself. */
  readonly shows?: string;
}

interface InsertPanelProps {
  readonly context: PaneContext;
  /** What is being inserted, for the panel's name. */
  readonly title: string;
  readonly offers: readonly InsertOffer[];
  readonly onClose: () => void;
}

const addressOf = ({ sheet, address }: CellBlock): string => `${sheet}!${address}`;

/** What stands in the cell now: its formula where there is one. */
const contentOf = (place: CellBlock): string => String(place.formulas[0]?.[0] ?? "");

/** Shows what would go where and writes it on a click; a filled cell needs a second, explicit click. */
export function InsertPanel({ context, title, offers, onClose }: InsertPanelProps) {
  const { words, host, announce } = context;
  const { place, fault, look, run } = useInsertionPlace(context);
  const [chosen, setChosen] = useState(0);
  const [outcome, setOutcome] = useState<string | null>(null);
  const [askedAt, setAskedAt] = useState<string | null>(null);
  const offer = offers[chosen] ?? offers[0];
  if (offer === undefined || host === null) return null;
  const asking = place !== null && askedAt === addressOf(place);

  const say = (sentence: string) => {
    setOutcome(sentence);
    announce(sentence);
  };
  const write = (target: CellBlock, overwrite: boolean) =>
    run(async () => {
      const answer = await host.insert(target, [[offer.content]], { overwrite });
      if (answer === "written") say(words.insert.done(addressOf(target)));
      else say(words.insert[answer === "filled" ? "filled" : "changed"](addressOf(target)));
      setAskedAt(answer === "filled" ? addressOf(target) : null);
      await look();
    });

  return (
    <div
      class="insert"
      role="group"
      aria-label={words.insert.title(title)}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        onClose();
      }}
    >
      <div class="insert-offers">
        {offers.map(({ label }, index) => (
          <label key={label}>
            <input
              type="radio"
              name="insert-offer"
              checked={index === chosen}
              onChange={() => {
                setChosen(index);
                setAskedAt(null);
                setOutcome(null);
              }}
            />
            {label}
          </label>
        ))}
      </div>
      {place !== null && (
        <dl class="insert-preview">
          <dt>{words.insert.cell}</dt>
          <dd>{addressOf(place)}</dd>
          <dt>{words.insert.now}</dt>
          <dd>{contentOf(place) === "" ? words.insert.empty : contentOf(place)}</dd>
          <dt>{words.insert.then}</dt>
          <dd>
            <code>{String(offer.content)}</code>
            {offer.shows !== undefined && <> → {offer.shows}</>}
          </dd>
        </dl>
      )}
      {(fault ?? outcome) !== null && <p class="insert-outcome">{fault ?? outcome}</p>}
      <div class="buttons">
        {asking ? (
          <button type="button" class="danger" onClick={() => void write(place, true)}>
            {words.insert.replace(addressOf(place))}
          </button>
        ) : (
          <button
            type="button"
            class="primary"
            disabled={place === null}
            onClick={() => place !== null && void write(place, false)}
          >
            {words.insert.write}
          </button>
        )}
        <button type="button" onClick={onClose}>
          {words.close}
        </button>
      </div>
    </div>
  );
}
