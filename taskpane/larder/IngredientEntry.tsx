import { bibliography } from "../../src/foundation/bibliography";
import { cautions } from "../../src/catalogue/cautions";
import type { Ingredient } from "../../src/catalogue/ingredient";
import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import { allergenSentence } from "./allergenSentence";
import { effectLines } from "./effectLines";
import { FigureList } from "./FigureList";
import { ingredientLines, measureLines } from "./ingredientLines";
import { inMixLines } from "./inMixLines";

interface IngredientEntryProps {
  readonly context: PaneContext;
  readonly ingredient: Ingredient;
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
        {allergenSentence({ kind: "ingredient", item: ingredient }, context)}
      </Notice>
      <FigureList
        context={context}
        title={words.larder.effect.title}
        subject={ingredient.name}
        lines={[...effectLines(ingredient.name, words), ...inMixLines(ingredient, words)]}
      />
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
