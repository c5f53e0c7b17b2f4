import type { PaneContext } from "../view";
import type { RecipeAnswers } from "./recipeAnswers";

interface SumsLineProps {
  readonly context: PaneContext;
  readonly answers: RecipeAnswers;
}

/** What a mix is before it freezes: solids, sweetness, water activity. */
export function SumsLine({ context, answers }: SumsLineProps) {
  const { words, numbers } = context;
  const { sweetness, sweetnessBand, solidsGrams, solidsBand, totalGrams } = answers;
  const { waterActivity, waterActivityBand } = answers;
  const parts: [string, string][] = [];
  // Solids are everything but water and alcohol.
  if (typeof solidsGrams === "number" && typeof totalGrams === "number" && totalGrams > 0) {
    parts.push([
      words.solids,
      numbers.share(solidsGrams / totalGrams, typeof solidsBand === "number" ? solidsBand : null),
    ]);
  }
  if (typeof sweetness === "number") {
    const isKnown = typeof sweetnessBand === "number" && sweetnessBand > 0;
    const grams = isKnown
      ? numbers.withBand(sweetness, sweetnessBand, "g")
      : `${numbers.fixed(sweetness, 1)} g`;
    parts.push([words.sweetness, words.sweetnessValue(grams)]);
  }
  if (typeof waterActivity === "number" && typeof waterActivityBand === "number") {
    const value = numbers.withBand(waterActivity, waterActivityBand, "").trim();
    parts.push([words.waterActivity, value]);
  }
  return (
    <dl class="sums">
      {parts.map(([label, value]) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
