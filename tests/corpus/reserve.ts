import type { Layout } from "./kit";

/** Layouts whose misses nobody looks at: only their figures count. */
export const reserveLayouts: readonly Layout[] = [];
