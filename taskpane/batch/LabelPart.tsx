import { Fragment } from "preact";
import { useState } from "preact/hooks";
import type { BatchProps } from "./batchProps";
import { labelLine, labelParts, stressed } from "./labelText";

/** The ingredients as a label lists them, allergens stressed; unknown ones named. */
export function LabelPart({ context, mix, rows }: BatchProps) {
  const { words, announce } = context;
  const texts = words.batch.label;
  const [told, setTold] = useState<string | null>(null);
  const parts = labelParts(rows, mix.own);
  const unknown = parts.filter(({ isUnknown }) => isUnknown).map(({ name }) => name);
  const tell = (sentence: string) => {
    setTold(sentence);
    announce(sentence);
  };
  const copy = () =>
    navigator.clipboard.writeText(`${texts.ingredients}: ${labelLine(parts, words)}`).then(
      () => tell(texts.copied),
      () => tell(texts.notCopied),
    );
  return (
    <details>
      <summary>{texts.title}</summary>
      <p class="label-text">
        {texts.ingredients}:{" "}
        {parts.map((part, at) => (
          <Fragment key={part.name}>
            {at > 0 && ", "}
            {part.name}
            {part.allergens !== "" && (
              <>
                {" "}
                (<strong>{stressed(part, words)}</strong>)
              </>
            )}
          </Fragment>
        ))}
      </p>
      {unknown.length > 0 && <p class="fault">{texts.unknown(unknown.join(", "))}</p>}
      <p class="quiet">{texts.about}</p>
      <button type="button" class="small" onClick={() => void copy()}>
        {texts.copy}
      </button>
      {told !== null && <p>{told}</p>}
    </details>
  );
}
