import type { Layout } from "./kit";
import { boxes } from "./unseen/boxes";
import { charts } from "./unseen/charts";
import { costs } from "./unseen/costs";
import { farms } from "./unseen/farms";
import { files } from "./unseen/files";
import { formulations } from "./unseen/formulation";
import { groups } from "./unseen/groups";
import { parlourKinds } from "./unseen/kinds";
import { notebooks } from "./unseen/notebooks";
import { seasons } from "./unseen/seasons";
import { spirits } from "./unseen/spirits";
import { worksheets } from "./unseen/worksheets";

/** Sheets of all kinds, held out until the others were understood. */
export const unseenLayouts: readonly Layout[] = [
  ...[...costs, ...formulations, ...charts, ...parlourKinds, ...groups, ...worksheets, ...files],
  ...[...notebooks, ...spirits, ...seasons, ...boxes, ...farms],
];
