import type { PaneContext } from "../view";
import type { useRecipe } from "./useRecipe";

interface RecipeHeadProps {
  readonly context: PaneContext;
  readonly title: string;
  readonly recipe: ReturnType<typeof useRecipe>;
}

/** A recipe's title, with the ways to keep it and to read it again. */
export function RecipeHead({ context, title, recipe }: RecipeHeadProps) {
  const { words } = context;
  return (
    <div class="bowl-head">
      <h2>{title}</h2>
      <div class="buttons">
        <button
          type="button"
          class="small"
          aria-pressed={recipe.isKept}
          onClick={() => recipe.keep(!recipe.isKept)}
          title={words.keepAbout}
        >
          {words.keep}
        </button>
        <button type="button" class="small" onClick={() => void recipe.readAgain()}>
          {words.readAgain}
        </button>
      </div>
    </div>
  );
}
