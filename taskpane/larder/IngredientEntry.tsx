import { bibliography } from "../../src/foundation/bibliography";
import { cautions } from "../../src/catalogue/cautions";
import type { Allergen, Ingredient } from "../../src/catalogue/ingredient";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import { FigureList } from "./FigureList";
import { ingredientLines, measureLines } from "./ingredientLines";

interface IngredientEntryProps {
  readonly context: PaneContext;
  readonly ingredient: Ingredient;
}

/** "Allergens: milk, soy", "none of the major allergens", or "unknown", never nothing. */
function allergenSentence(ingredient: Ingredient, { words }: PaneContext): string {
  const { allergens, allergensByMaker = [] } = ingredient;
  if (allergens === "unknown") return words.allergensUnknown;
  const named = (keys: readonly Allergen[]) =>
    keys.map((allergen) => words.allergenNames[allergen]).join(", ");
  const byMaker =
    allergensByMaker.length === 0 ? [] : [words.allergensByMaker(named(allergensByMaker))];
  const certain =
    allergens.length > 0
      ? [words.allergens(named(allergens))]
      : byMaker.length === 0
        ? [words.allergensNone]
        : [];
  return [...certain, ...byMaker].join(". ");
}

/** What an ingredient is made of, how it is measured, and what to be careful about. */
export function IngredientEntry({ context, ingredient }: IngredientEntryProps) {
  const { words } = context;
  return (
    <>
      <p class="quiet">{words.groups[ingredient.group]}</p>
      {ingredient.inclusion === true && <Notice tone="note">{words.inclusion}</Notice>}
      {ingredient.cautions.map((caution) => (
        <Notice key={caution} tone="warning">
          {cautions[caution].text}
          <p class="figure-why">
            {cautions[caution].sources.map((key) => bibliography[key]).join(" · ")}
          </p>
        </Notice>
      ))}
      <Notice tone={ingredient.allergens === "unknown" ? "warning" : "quiet"}>
        {allergenSentence(ingredient, context)}
      </Notice>
      <FigureList
        context={context}
        title={words.composition}
        subject={ingredient.name}
        lines={ingredientLines(ingredient, words)}
      />
      <FigureList
        context={context}
        title={words.measures}
        subject={ingredient.name}
        lines={measureLines(ingredient, words)}
      />
      {ingredient.note && <p>{ingredient.note}</p>}
    </>
  );
}
