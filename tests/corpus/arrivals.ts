import type { Layout } from "./kit";
import { callers } from "./callers";
import { guests } from "./guests";
import { neighbours } from "./neighbours";
import { regulars } from "./regulars";

/** Lots that the audit has met only lately. */
export const arrivals: readonly Layout[] = [...callers, ...guests, ...neighbours, ...regulars];
