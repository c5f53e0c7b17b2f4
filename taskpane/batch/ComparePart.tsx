import { useState } from "preact/hooks";
import { isSameMix, type RecipeMix } from "../bowl/askMix";
import { AmountTable } from "../components/AmountTable";
import type { BatchProps } from "./batchProps";
import { versionFigures, versionRows } from "./versions";

/** Two versions of a recipe side by side: amounts, figures, differences. */
export function ComparePart({ context, mix, servingC }: BatchProps) {
  const { words, numbers } = context;
  const texts = words.batch.compare;
  const [kept, setKept] = useState<RecipeMix | null>(null);
  const isSame = kept !== null && isSameMix(kept, mix);
  const cell = (value: number | null, decimals: number) =>
    value === null ? "–" : numbers.fixed(value, decimals);
  const row = (name: string, one: number | null, other: number | null, decimals: number) => [
    name,
    cell(one, decimals),
    cell(other, decimals),
    one === null || other === null ? "–" : numbers.fixed(other - one, decimals),
  ];
  const figures = kept === null ? null : versionFigures(kept, servingC);
  const now = versionFigures(mix, servingC);
  const percent = (value: number | null) => (value === null ? null : value * 100);
  return (
    <details>
      <summary>{texts.title}</summary>
      {kept !== null && figures !== null && (
        <>
          {isSame && <p class="quiet">{texts.select}</p>}
          {!isSame && (
            <AmountTable
              head={[texts.item, kept.title, mix.title, texts.difference]}
              rows={[
                ...versionRows(kept, mix).map(({ name, one, other }) => row(name, one, other, 1)),
                row(texts.total, figures.totalGrams, now.totalGrams, 1),
                row(texts.firstIce, figures.firstIceC, now.firstIceC, 2),
                row(
                  `${texts.iceServed(numbers.plain(servingC))}, %`,
                  percent(figures.iceServed),
                  percent(now.iceServed),
                  1,
                ),
                row(texts.sweetness, figures.sweetness, now.sweetness, 1),
                row(
                  `${texts.solids}, %`,
                  percent(figures.solidsFraction),
                  percent(now.solidsFraction),
                  1,
                ),
              ]}
            />
          )}
        </>
      )}
      <button type="button" class="small" onClick={() => setKept(kept === null ? mix : null)}>
        {kept === null ? texts.keep(mix.title) : texts.drop}
      </button>
    </details>
  );
}
