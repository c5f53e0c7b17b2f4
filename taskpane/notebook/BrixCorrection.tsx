import { useMemo, useState } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import { Choice } from "../components/Choice";
import { NumberField } from "../components/NumberField";
import type { PaneContext } from "../view";
import { brixIngredient } from "./learnIngredient";
import { useOwnSheet } from "./useOwnSheet";

interface BrixCorrectionProps {
  readonly context: PaneContext;
  /** The recipe's ingredients. */
  readonly names: readonly string[];
  readonly own: Matrix | null;
}

/** A fruit or a syrup of the recipe, brought to the Brix a refractometer reads, as own ingredients. */
export function BrixCorrection({ context, names, own }: BrixCorrectionProps) {
  const { words, numbers } = context;
  const texts = words.notebook;
  const [asked, setAsked] = useState("");
  const [brix, setBrix] = useState<number | null>(null);
  const ownSheet = useOwnSheet(context, own);
  const item = names.includes(asked) ? asked : null;
  const scaled = useMemo(
    () =>
      item === null || brix === null
        ? null
        : brixIngredient(item, brix, texts.brixFrom(numbers.plain(brix)), own),
    [item, brix, own, texts, numbers],
  );
  return (
    <details>
      <summary>{texts.brixTitle}</summary>
      <p class="quiet">{texts.brixAbout}</p>
      <Choice
        label={texts.ingredient}
        value={item}
        none="–"
        options={names.map((value) => ({ value }))}
        onChange={setAsked}
      />
      <NumberField
        context={context}
        label={texts.brixRead}
        unit="°Bx"
        from={0.1}
        to={84}
        value={brix}
        onChange={setBrix}
      />
      {item !== null && brix !== null && scaled === null && (
        <p class="fault">{texts.noBrix(item)}</p>
      )}
      {scaled !== null && item !== null && (
        <>
          <p>{texts.brixFactor(item, numbers.fixed(scaled.factor, 2))}</p>
          <button type="button" onClick={() => void ownSheet.write(scaled.rows)}>
            {texts.apply}
          </button>
        </>
      )}
      {ownSheet.outcome !== null && <p>{ownSheet.outcome}</p>}
    </details>
  );
}
