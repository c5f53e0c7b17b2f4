import { afar } from "./afar";
import { beyond } from "./beyond";
import type { Layout } from "./kit";
import { opened } from "./opened";
import { pantries } from "./pantries";
import { teachings } from "./teachings";
import { unopened } from "./unopened";
import { wayside } from "./wayside";

/** Layouts that were looked at, but whose books are not all understood yet; `tests/benchmarks/auditCorpus.ts` tells how far. */
export const newestLayouts: readonly Layout[] = [
  ...afar,
  ...beyond,
  ...teachings,
  ...pantries,
  ...unopened,
  ...opened,
  ...wayside,
];
