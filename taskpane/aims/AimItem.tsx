import { Unfold } from "../components/Unfold";
import type { PaneContext } from "../view";
import type { Aim, AimBody } from "./aim";
import { AimForm } from "./AimForm";
import type { useOwnAims } from "./useOwnAims";

interface AimItemProps {
  readonly context: PaneContext;
  readonly aim: Aim;
  readonly aims: ReturnType<typeof useOwnAims>;
}

/** One target: what it asks for, and what can be done with it. */
export function AimItem({ context, aim, aims }: AimItemProps) {
  const { words, numbers } = context;
  const texts = words.aims;
  const { label, basis, place } = aim;
  const isOwn = aim.obtained === "own";
  const names = aims.own.map(({ name }) => name);
  const from: AimBody = isOwn ? aim : { ...aim, name: texts.copyName(label) };
  const where = place === null ? "" : `${place.sheet}!${place.address}`;
  return (
    <li class="aim">
      <strong>{label}</strong>
      <p class="figure-why">
        {words.target.asks[basis](
          numbers.percent(aim.iceFrom),
          numbers.percent(aim.iceTo),
          numbers.plain(aim.temperatureC),
        )}{" "}
        {words.said(aim.note)}
        {isOwn && place === null && ` (${texts.unkept})`}
      </p>
      <div class="aim-buttons">
        <Unfold
          label={isOwn ? texts.change : texts.copy}
          fullLabel={isOwn ? texts.changeOf(label) : texts.copyOf(label)}
          title={isOwn ? texts.changeOf(label) : texts.copyOf(label)}
        >
          {(close) => (
            <AimForm
              context={context}
              from={from}
              taken={names.filter((name) => !isOwn || name !== aim.name)}
              onSave={(body) => aims.save(body, isOwn ? aim : null)}
              onClose={close}
            />
          )}
        </Unfold>
        {place !== null && (
          <button type="button" class="small" onClick={() => aims.goTo(place.sheet, place.address)}>
            {texts.goTo(where)}
          </button>
        )}
        {isOwn && place === null && (
          <button
            type="button"
            class="small"
            aria-label={texts.dropOf(label)}
            onClick={() => aims.drop(aim)}
          >
            {texts.drop}
          </button>
        )}
      </div>
    </li>
  );
}
