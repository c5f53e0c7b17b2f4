import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import { allergenText } from "./allergenText";
import type { EaterFacts } from "./eaterFacts";

interface CautionsProps {
  readonly context: PaneContext;
  readonly facts: EaterFacts;
}

/** What to tell the eater: cautions, allergens, and of what nothing is known. */
export function Cautions({ context, facts }: CautionsProps) {
  const { words } = context;
  const { allergens, cautions, general, unknown } = facts;
  return (
    <section>
      <h3>{words.eater.title}</h3>
      {cautions.map(({ text, items, source }) => (
        <Notice key={text} tone="warning">
          {words.said(text)}
          <p class="figure-why">
            {items.map(words.said).join(", ")} · {words.said(source)}
          </p>
        </Notice>
      ))}
      <Notice tone={unknown.length > 0 ? "warning" : "quiet"}>
        {allergens.length === 0 && unknown.length === 0 && <p>{words.eater.noAllergens}</p>}
        {allergens.length > 0 && (
          <>
            {words.eater.allergens}
            <ul>
              {allergens.map(({ text, items }) => (
                <li key={text}>
                  <strong>{allergenText(text, words)}</strong>: {items.join(", ")}
                </li>
              ))}
            </ul>
          </>
        )}
        {unknown.length > 0 && <p>{words.eater.unknown(unknown.join(", "))}</p>}
        <p class="figure-why">{words.eater.defer}</p>
      </Notice>
      <details>
        <summary>{words.eater.general}</summary>
        <ul class="eater-general">
          {general.map((text) => (
            <li key={text}>{words.said(text)}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}
