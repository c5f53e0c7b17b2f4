import { cellsByName } from "./cellsByName";
import { columnsSwapped } from "./columnsSwapped";
import { formatsDropped } from "./formatsDropped";
import { listsAsTables } from "./listsAsTables";
import type { Restatement } from "./restatement";
import { roomier } from "./roomier";
import { sheetsReversed } from "./sheetsReversed";
import { spelled } from "./spelled";
import { sumsAsAdditions } from "./sumsAsAdditions";
import { turned } from "./turned";

/** Other ways of putting down a sheet that the audit is held to. */
export const restatements: readonly Restatement[] = [
  cellsByName,
  listsAsTables,
  ...roomier,
  ...spelled,
  sheetsReversed,
  sumsAsAdditions,
  columnsSwapped,
  formatsDropped,
];

/** Ways that are measured only: a list that is turned is another kind of list, of which less is read so far. */
export const measuredOnly: readonly Restatement[] = [turned];
