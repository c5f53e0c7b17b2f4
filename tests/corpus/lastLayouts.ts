import { commuters } from "./commuters";
import type { Layout } from "./kit";
import { strollers } from "./strollers";
import { tenants } from "./tenants";

/** The last layouts that were looked at: their books are understood as they are, not yet in every restated way. */
export const lastLayouts: readonly Layout[] = [...strollers, ...tenants, ...commuters];
