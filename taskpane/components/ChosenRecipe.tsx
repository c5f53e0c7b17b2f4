import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import type { RecognisedRecipe } from "../bowl/recognised";
import { NoRecipe } from "../bowl/NoRecipe";
import { recipeTroubleOf } from "../bowl/recipeTroubleOf";
import { RecipeTrouble } from "../bowl/RecipeTrouble";
import { toGrams } from "../bowl/toGrams";
import type { useRecipe } from "../bowl/useRecipe";
import type { RecipeMix } from "../bowl/askMix";
import type { PaneContext } from "../view";
import { Notice } from "./Notice";

interface ChosenRecipeProps {
  readonly context: PaneContext;
  readonly recipe: ReturnType<typeof useRecipe>;
  /** Turns the recipe into the one meant, before it is looked at; as it stands when absent. */
  readonly meant?: (mix: RecipeMix) => RecipeMix;
  /** Drawn when there is a recipe that the functions can answer about. */
  readonly children: (mix: RecipeMix, recipe: RecognisedRecipe) => ComponentChildren;
}

/** The recipe under the selection for a view that only works with one; else the sentence that says what is missing. */
export function ChosenRecipe({ context, recipe, meant, children }: ChosenRecipeProps) {
  const { words } = context;
  const { recognition, own, fault } = recipe;
  const mix = useMemo(() => {
    if (recognition?.kind !== "recipe") return null;
    const { title } = recognition;
    const read = { ...toGrams(recognition, own.cells), title, own: own.cells };
    return meant === undefined ? read : meant(read);
  }, [recognition, own.cells, meant]);
  if (fault !== null) return <Notice tone="trouble">{fault}</Notice>;
  if (recognition === null) return <p class="quiet">{words.reading}</p>;
  if (recognition.kind !== "recipe") {
    return <NoRecipe context={context} recognition={recognition} />;
  }
  if (mix === null) return null; // never: there is a recipe
  const trouble = recipeTroubleOf(mix);
  return trouble === null ? (
    <>{children(mix, recognition)}</>
  ) : (
    <RecipeTrouble context={context} recipe={recognition} own={own.cells} sentence={trouble} />
  );
}
