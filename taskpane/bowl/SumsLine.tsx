import type { PaneContext } from "../view";
import type { RecipeAnswers } from "./recipeAnswers";

interface SumsLineProps {
  readonly context: PaneContext;
  readonly answers: RecipeAnswers;
}

/** Sweetness and solids: sums over the ingredients, no freezing in them. */
export function SumsLine({ context, answers }: SumsLineProps) {
  const { words, numbers } = context;
  const { sweetness, solidsGrams, totalGrams } = answers;
  const parts: [string, string][] = [];
  // Solids are everything but water and alcohol.
  if (typeof solidsGrams === "number" && typeof totalGrams === "number" && totalGrams > 0) {
    parts.push([words.solids, numbers.percent(solidsGrams / totalGrams, 1)]);
  }
  if (typeof sweetness === "number") {
    parts.push([words.sweetness, words.sweetnessValue(numbers.fixed(sweetness, 1))]);
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
