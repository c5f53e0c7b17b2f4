import { batch } from "./views/batch";
import type { View } from "./view";
import { aims } from "./views/aims";
import { bowl } from "./views/bowl";
import { curves } from "./views/curves";
import { larder } from "./views/larder";
import { notebook } from "./views/notebook";
import { readThrough } from "./views/readThrough";
import { steer } from "./views/steer";
import { why } from "./views/why";

/** Every view of the pane, in the order of its tabs. */
export const views: readonly View[] = [
  bowl,
  steer,
  batch,
  curves,
  aims,
  larder,
  notebook,
  why,
  readThrough,
];
