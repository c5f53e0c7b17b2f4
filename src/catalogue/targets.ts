import type { ServingTarget } from "./target";

/** How frozen sweets are served. Bands computed with textbook mixes; each mix is tested against its own. */
export const servingTargets: readonly ServingTarget[] = [];
