import { cellsByName } from "./cellsByName";
import { listsAsTables } from "./listsAsTables";
import type { Restatement } from "./restatement";
import { roomier } from "./roomier";
import { spelled } from "./spelled";

/** All other ways of putting down a sheet. */
export const restatements: readonly Restatement[] = [
  cellsByName,
  listsAsTables,
  ...roomier,
  ...spelled,
];
