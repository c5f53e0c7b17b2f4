import { doorstep } from "./doorstep";
import type { Layout } from "./kit";
import { settled } from "./settled";
import { shelved } from "./shelved";
import { unsealed } from "./unsealed";

/** Layouts that were looked at, but whose books are not all understood yet; `tests/benchmarks/auditCorpus.ts` tells how far. */
export const newestLayouts: readonly Layout[] = [
  ...[...doorstep, ...shelved, ...settled, ...unsealed],
];
