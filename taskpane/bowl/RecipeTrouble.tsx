import { Notice } from "../components/Notice";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import type { RecognisedRecipe } from "./recognised";

interface RecipeTroubleProps {
  readonly context: PaneContext;
  readonly recipe: RecognisedRecipe;
  readonly sentence: string;
}

/** The function's sentence why nothing can be said of the recipe, and the way to the names it may mean. */
export function RecipeTrouble({ context, recipe, sentence }: RecipeTroubleProps) {
  const { words, host } = context;
  const { fault, run } = useHostTask(context);
  const unknown = recipe.lines.filter(({ known, amount }) => !known && amount !== "");
  return (
    <>
      <div role="status">
        <Notice tone="trouble">{sentence}</Notice>
      </div>
      {unknown.length > 0 && (
        <div class="buttons trouble-cells">
          <span class="quiet">{words.troubleAt}</span>
          {unknown.map(({ cell, name }) => (
            <button
              key={cell}
              type="button"
              class="small"
              onClick={() => void run(async () => host?.goTo(recipe.sheet, cell))}
            >
              {cell} {String(name)}
            </button>
          ))}
        </div>
      )}
      {fault !== null && <p class="fault">{fault}</p>}
    </>
  );
}
