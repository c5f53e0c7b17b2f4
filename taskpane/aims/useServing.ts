import { useState } from "preact/hooks";
import type { RecognisedRecipe } from "../bowl/recognised";
import { USUAL_SERVING_C } from "../bowl/usualTemperatures";
import type { PaneContext } from "../view";
import type { Aim } from "./aim";
import { useAim } from "./useAim";

/** How a recipe is meant to be, and at what it is served: at its target's temperature until another is typed. */
export function useServing(context: PaneContext, recipe: RecognisedRecipe | null) {
  const { aim, choose } = useAim(context, recipe);
  const [typed, setTyped] = useState({ servingC: USUAL_SERVING_C, with: "" });
  const name = aim?.name ?? "";
  return {
    aim,
    servingC: aim !== null && typed.with !== name ? aim.temperatureC : typed.servingC,
    onAim: (next: Aim | null) => {
      setTyped({ servingC: next?.temperatureC ?? typed.servingC, with: next?.name ?? "" });
      choose(next);
    },
    onServing: (servingC: number) => setTyped({ servingC, with: name }),
  };
}
