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

/** All other ways of putting down a sheet. */
export const restatements: readonly Restatement[] = [
  cellsByName,
  listsAsTables,
  ...roomier,
  ...spelled,
  sheetsReversed,
  sumsAsAdditions,
  columnsSwapped,
  formatsDropped,
  turned,
];
