import { useMemo } from "preact/hooks";
import { isProblem } from "../../src/foundation/problem";
import { NoRecipe } from "../bowl/NoRecipe";
import { OwnChoice } from "../bowl/OwnChoice";
import { RecipeHead } from "../bowl/RecipeHead";
import { RecipeTrouble } from "../bowl/RecipeTrouble";
import { TakenAs } from "../bowl/TakenAs";
import { useRecipe } from "../bowl/useRecipe";
import { Notice } from "../components/Notice";
import { SteerForm } from "../steer/SteerForm";
import { steerLines } from "../steer/steerLines";
import type { View, ViewProps } from "../view";
import "../bowl/bowl.css";
import "../steer/steer.css";

/** Changes the selected recipe as little as it takes to meet what is wished of it. */
function Steer({ context, active }: ViewProps) {
  const { words, host } = context;
  const recipe = useRecipe(context, active);
  const { recognition, own, fault } = recipe;
  const lines = useMemo(
    () => (recognition?.kind === "recipe" ? steerLines(recognition, own.cells) : null),
    [recognition, own.cells],
  );
  if (host === null) return <Notice tone="note">{words.steer.outside}</Notice>;
  if (fault !== null) return <Notice tone="trouble">{fault}</Notice>;
  if (recognition === null) return <p class="quiet">{words.reading}</p>;
  if (recognition.kind !== "recipe") {
    return <NoRecipe context={context} recognition={recognition} />;
  }
  if (lines === null) return null; // never: there is a recipe
  if (isProblem(lines)) {
    return (
      <>
        <RecipeTrouble
          context={context}
          recipe={recognition}
          own={own.cells}
          sentence={lines.message}
        />
        <OwnChoice context={context} own={own} hasRecipe />
      </>
    );
  }
  return (
    <div class="steer">
      <RecipeHead context={context} title={recognition.title} recipe={recipe} />
      <TakenAs context={context} recipe={recognition} own={own.chosen} onChange={null} />
      <SteerForm
        // Another recipe, or other amounts, begin anew: limits and answers were about the old ones.
        key={JSON.stringify([recognition.sheet, recognition.amountRange, lines])}
        context={context}
        recipe={recognition}
        lines={lines}
        own={own.cells}
        onHold={recipe.hold}
      />
      <OwnChoice context={context} own={own} hasRecipe />
    </div>
  );
}

export const steer: View = { key: "steer", Content: Steer };
