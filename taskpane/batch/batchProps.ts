import type { RecipeMix, MixRow } from "../bowl/askMix";
import type { PaneContext } from "../view";

/** What every part of the view works from. */
export interface BatchProps {
  readonly context: PaneContext;
  readonly mix: RecipeMix;
  readonly rows: readonly MixRow[];
  /** What the recipe is served at: by its target, until another is typed. */
  readonly servingC: number;
  /** Asks for the recipe to stay while the selection moves, or lets go of it. */
  readonly onHold: (hold: boolean) => void;
}
