import { benches } from "./benches";
import { counters } from "./counters";
import { doorstep } from "./doorstep";
import type { Layout } from "./kit";
import { settled } from "./settled";
import { shelved } from "./shelved";
import { sidings } from "./sidings";

/** Layouts that were looked at, but whose books are not all understood yet; `tests/benchmarks/auditCorpus.ts` tells how far. */
export const newestLayouts: readonly Layout[] = [
  ...[...doorstep, ...shelved, ...counters, ...sidings, ...settled, ...benches],
];
