import type { Layout } from "./kit";
import { guests } from "./guests";
import { neighbours } from "./neighbours";
import { regulars } from "./regulars";

/** Lots that the audit has met only lately. */
export const arrivals: readonly Layout[] = [...guests, ...neighbours, ...regulars];
