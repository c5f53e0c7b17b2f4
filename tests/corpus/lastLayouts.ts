import { apart } from "./apart";
import { commuters } from "./commuters";
import { farmers } from "./farmers";
import { handwerker } from "./handwerker";
import type { Layout } from "./kit";
import { makers } from "./makers";
import { strollers } from "./strollers";
import { teachers } from "./teachers";
import { tenants } from "./tenants";

/** The last layouts that were looked at: their books are understood as they are, not yet in every restated way. */
export const lastLayouts: readonly Layout[] = [
  ...[...strollers, ...tenants, ...commuters, ...farmers, ...handwerker, ...teachers, ...makers],
  ...apart,
];
