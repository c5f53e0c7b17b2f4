import type { PicturedMix, PicturedRow } from "../curves/askMix";
import type { PaneContext } from "../view";

/** What every part of the view works from. */
export interface BatchProps {
  readonly context: PaneContext;
  readonly mix: PicturedMix;
  readonly rows: readonly PicturedRow[];
  /** Asks for the recipe to stay while the selection moves, or lets go of it. */
  readonly onHold: (hold: boolean) => void;
}
