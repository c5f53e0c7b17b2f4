import type { View } from "./view";
import { bowl } from "./views/bowl";
import { curves } from "./views/curves";
import { larder } from "./views/larder";
import { notebook } from "./views/notebook";
import { readThrough } from "./views/readThrough";
import { why } from "./views/why";

/** Every view of the pane, in the order of its tabs. */
export const views: readonly View[] = [bowl, curves, larder, notebook, why, readThrough];
