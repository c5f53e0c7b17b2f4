import type { Layout } from "./kit";
import { unseenLayouts } from "./unseen";
import { visitors } from "./visitors";

/** The last lots: written when the audit was, and looked at the least. */
export const reserveLayouts: readonly Layout[] = [...visitors, ...unseenLayouts];
