import { useEffect } from "preact/hooks";
import { ColumnForm } from "../bowl/ColumnForm";
import { OwnChoice } from "../bowl/OwnChoice";
import { NoRecipe } from "../bowl/NoRecipe";
import { RecipeHead } from "../bowl/RecipeHead";
import { RecipeReport } from "../bowl/RecipeReport";
import { TakenAs } from "../bowl/TakenAs";
import { useRecipe } from "../bowl/useRecipe";
import { Notice } from "../components/Notice";
import { FirstRun } from "../welcome/FirstRun";
import { rememberWelcomed } from "../welcome/welcomed";
import type { View, ViewProps } from "../view";
import "../bowl/bowl.css";

/** The recipe under the selection: how it freezes, what was read as what, and whether it meets a target. */
function Bowl({ context, active }: ViewProps) {
  const { words, host, shared } = context;
  const recipe = useRecipe(context, active);
  const { recognition, own } = recipe;
  const isRecipe = recognition?.kind === "recipe";
  useEffect(() => {
    if (isRecipe) rememberWelcomed(shared);
  }, [isRecipe, shared]);
  if (host === null) return <Notice tone="note">{words.outsideBowl}</Notice>;
  return (
    <div class="bowl">
      <RecipeHead
        context={context}
        title={recognition?.kind === "recipe" ? recognition.title : words.bowlTitle}
        recipe={recipe}
      />
      {recipe.fault !== null && <Notice tone="trouble">{recipe.fault}</Notice>}
      {recognition === null && recipe.fault === null && <p class="quiet">{words.reading}</p>}
      {recognition?.kind === "none" && (
        <>
          <FirstRun context={context} />
          <NoRecipe context={context} recognition={recognition} />
        </>
      )}
      {recognition?.kind === "question" && (
        <ColumnForm
          key={`${recognition.sheet}!${recognition.address}`}
          context={context}
          question={recognition}
          onAnswer={recipe.answer}
        />
      )}
      {recognition?.kind === "recipe" && (
        <>
          <TakenAs
            context={context}
            recipe={recognition}
            own={own.chosen}
            onChange={recipe.hasAnswered ? () => recipe.answer(null) : null}
          />
          <RecipeReport
            context={context}
            recipe={recognition}
            own={{ range: own.chosen, cells: own.cells }}
            onHold={recipe.hold}
          />
        </>
      )}
      <OwnChoice context={context} own={own} hasRecipe={isRecipe} />
    </div>
  );
}

export const bowl: View = { key: "bowl", Content: Bowl };
