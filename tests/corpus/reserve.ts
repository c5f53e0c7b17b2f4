import type { Layout } from "./kit";
import { reserveLists } from "./reserve/lists";
import { reserveOthers } from "./reserve/others";

/** Layouts whose misses nobody looks at: only their figures count. */
export const reserveLayouts: readonly Layout[] = [...reserveLists, ...reserveOthers];
