import { Notice } from "../components/Notice";
import type { PaneContext } from "../view";
import type { ColumnQuestion, NoRecipe as Missing } from "./recognised";

interface NoRecipeProps {
  readonly context: PaneContext;
  readonly recognition: ColumnQuestion | Missing;
}

/** Why a view that only works with a recipe has none: there is none, or the Bowl has a question about it. */
export function NoRecipe({ context, recognition }: NoRecipeProps) {
  const { words } = context;
  const sentence =
    recognition.kind === "none"
      ? words.noRecipe[recognition.why](`${recognition.sheet}!${recognition.address}`)
      : words.askInBowl;
  return <Notice tone="note">{sentence}</Notice>;
}
