import { gatherings } from "./gatherings";
import { harvests } from "./harvests";
import type { Layout } from "./kit";

/**
 * Layouts to measure the audit by, written by two people who had not seen its rules. Who mends rules does not look at
 * them (`gatherings`, `harvests`).
 */
export const heldOut: readonly Layout[] = [...harvests, ...gatherings];
