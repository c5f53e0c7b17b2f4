import type { PaneContext } from "../../view";
import type { LabelDraft } from "./draft";

/** What every part of the form works with. */
export interface DraftProps {
  readonly context: PaneContext;
  readonly draft: LabelDraft;
  readonly onChange: (change: Partial<LabelDraft>) => void;
}
