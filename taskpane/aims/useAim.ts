import { useMemo } from "preact/hooks";
import { useStore } from "../components/store";
import type { RecognisedRecipe } from "../bowl/recognised";
import type { PaneContext } from "../view";
import type { Aim } from "./aim";
import { aimNamed, allAims } from "./aimStore";

/** Every target there is to choose from. */
export function useAims({ shared, words }: PaneContext): readonly Aim[] {
  const state = useStore(shared.aims);
  return useMemo(() => allAims(state, words), [state, words]);
}

/**
 * The target of a recipe: the one chosen in any view, else the one that the sheet names beside the recipe's
 * amounts, else none.
 */
export function useAim(context: PaneContext, recipe: RecognisedRecipe | null) {
  const { aims: store } = context.shared;
  const { chosen } = useStore(store);
  const aims = useAims(context);
  const place = recipe === null ? "" : `${recipe.sheet}!${recipe.amountRange}`;
  const name = chosen[place];
  const aim = useMemo(() => {
    if (name !== undefined) return name === null ? null : aimNamed(aims, name);
    for (const text of recipe?.texts ?? []) {
      const named = aimNamed(aims, text);
      if (named !== null) return named;
    }
    return null;
  }, [aims, name, recipe]);
  const choose = (next: Aim | null) => {
    const now = store.now();
    store.set({ ...now, chosen: { ...now.chosen, [place]: next?.name ?? null } });
  };
  return { aim, choose };
}
