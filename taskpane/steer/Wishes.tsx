import type { Aim } from "../aims/aim";
import { TargetSelect } from "../bowl/TargetSelect";
import { Check } from "../components/Check";
import type { PaneContext } from "../view";
import { NumberField } from "./NumberField";
import { WISH_KEYS, type WishDraft, type WishKey } from "./wishDrafts";

export interface WishesValue {
  readonly target: Aim | null;
  readonly drafts: readonly WishDraft[];
  readonly keepsTotal: boolean;
  readonly wholeGrams: boolean;
}

interface WishesProps {
  readonly context: PaneContext;
  readonly value: WishesValue;
  readonly totalGrams: number;
  readonly onChange: (next: WishesValue) => void;
}

const USUAL_SERVING_C = -14;

/** What the recipe should become: how it is served first, then whatever else is added. */
export function Wishes({ context, value, totalGrams, onChange }: WishesProps) {
  const { words, numbers } = context;
  const texts = words.steer;
  const { target, drafts, keepsTotal, wholeGrams } = value;
  const left = WISH_KEYS.filter((key) => !drafts.some((draft) => draft.key === key));
  const add = (key: WishKey) => {
    const temperature = numbers.plain(target?.temperatureC ?? USUAL_SERVING_C);
    const next = { key, from: "", to: "", temperature };
    // A mass that is wished is not the mass that is kept.
    onChange({ ...value, drafts: [...drafts, next], keepsTotal: keepsTotal && key !== "total" });
  };
  const replace = (next: WishDraft) =>
    onChange({ ...value, drafts: drafts.map((each) => (each.key === next.key ? next : each)) });
  return (
    <fieldset>
      <legend>{texts.wishesTitle}</legend>
      <TargetSelect
        context={context}
        target={target}
        onChange={(next) => onChange({ ...value, target: next })}
      />
      {target !== null && (
        <p class="figure-why">
          {words.target.asks[target.basis](
            numbers.percent(target.iceFrom),
            numbers.percent(target.iceTo),
            numbers.plain(target.temperatureC),
          )}
        </p>
      )}
      {drafts.map((draft) => (
        <WishRow
          key={draft.key}
          context={context}
          draft={draft}
          onChange={replace}
          onRemove={() => onChange({ ...value, drafts: drafts.filter((each) => each !== draft) })}
        />
      ))}
      <select
        class="steer-add"
        aria-label={texts.addWish}
        value=""
        onChange={(event) => {
          const key = WISH_KEYS.find((each) => each === event.currentTarget.value);
          event.currentTarget.value = "";
          if (key !== undefined) add(key);
        }}
      >
        <option value="">{texts.addWish}</option>
        {left.map((key) => (
          <option key={key} value={key}>
            {texts.wishes[key]}
          </option>
        ))}
      </select>
      <Check
        checked={keepsTotal}
        onChange={(checked) => onChange({ ...value, keepsTotal: checked })}
      >
        {texts.keepTotal(numbers.plain(totalGrams))}
      </Check>
      <Check
        checked={wholeGrams}
        onChange={(checked) => onChange({ ...value, wholeGrams: checked })}
      >
        {texts.wholeGrams}
      </Check>
    </fieldset>
  );
}

interface WishRowProps {
  readonly context: PaneContext;
  readonly draft: WishDraft;
  readonly onChange: (next: WishDraft) => void;
  readonly onRemove: () => void;
}

/** One added wish: at least, at most, and for ice the temperature. */
function WishRow({ context, draft, onChange, onRemove }: WishRowProps) {
  const texts = context.words.steer;
  const name = texts.wishes[draft.key];
  const field = (part: "from" | "to" | "temperature", shown: string) => (
    <NumberField
      label={texts.ofItem(shown, name)}
      shown={shown}
      value={draft[part]}
      onInput={(typed) => onChange({ ...draft, [part]: typed })}
    />
  );
  return (
    <div class="steer-wish" role="group" aria-label={name}>
      <span class="steer-wish-name">{name}</span>
      <button type="button" class="small" aria-label={texts.removeWish(name)} onClick={onRemove}>
        ×
      </button>
      <div class="steer-numbers">
        {draft.key === "ice" && field("temperature", texts.atTemperature)}
        {draft.key !== "cost" && field("from", texts.from)}
        {field("to", texts.to)}
      </div>
    </div>
  );
}
