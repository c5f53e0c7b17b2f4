import type { View } from "./view";
import { bowl } from "./views/bowl";
import { larder } from "./views/larder";
import { readThrough } from "./views/readThrough";

/** Every view of the pane, in the order of its tabs. */
export const views: readonly View[] = [bowl, larder, readThrough];
