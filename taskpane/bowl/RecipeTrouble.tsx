import { useMemo } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import { Notice } from "../components/Notice";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import { faultyCells } from "./faultyCells";
import type { RecognisedRecipe } from "./recognised";

interface RecipeTroubleProps {
  readonly context: PaneContext;
  readonly recipe: RecognisedRecipe;
  readonly own: Matrix | null;
  readonly sentence: string;
}

/** The function's sentence why nothing can be said of the recipe, and the way to the cells it means. */
export function RecipeTrouble({ context, recipe, own, sentence }: RecipeTroubleProps) {
  const { words, host } = context;
  const { fault, run } = useHostTask(context);
  const faulty = useMemo(() => faultyCells(recipe, own), [recipe, own]);
  return (
    <>
      <div role="status">
        <Notice tone="trouble">{words.said(sentence)}</Notice>
      </div>
      {faulty.length > 0 && (
        <div class="buttons trouble-cells">
          <span class="quiet">{words.troubleAt}</span>
          {faulty.map(({ cell, text }) => (
            <button
              key={cell}
              type="button"
              class="small"
              onClick={() => void run(async () => host?.goTo(recipe.sheet, cell))}
            >
              {cell} {text}
            </button>
          ))}
        </div>
      )}
      {fault !== null && <p class="fault">{fault}</p>}
    </>
  );
}
