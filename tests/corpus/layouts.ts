import type { Layout } from "./kit";
import { costing } from "./layouts/costing";
import { drinks } from "./layouts/drinks";
import { groups } from "./layouts/groups";
import { groupsInGerman } from "./layouts/groupsInGerman";
import { larders } from "./layouts/larders";
import { lessons } from "./layouts/lessons";
import { lessonsInGerman } from "./layouts/lessonsInGerman";
import { logs } from "./layouts/logs";
import { nutritions } from "./layouts/nutrition";
import { tables } from "./layouts/tables";
import { variations } from "./layouts/variations";
import { classes } from "./layouts/classes";
import { grids } from "./layouts/grids";
import { lists } from "./layouts/lists";
import { measures } from "./layouts/measures";
import { others } from "./layouts/others";
import { pages } from "./layouts/pages";
import { perCent } from "./layouts/perCent";
import { several } from "./layouts/several";
import { writtenOut } from "./layouts/writtenOut";

/** Every layout but those held in reserve. */
export const layouts: readonly Layout[] = [
  ...[
    ...lists,
    ...several,
    ...grids,
    ...perCent,
    ...classes,
    ...others,
    ...measures,
    ...pages,
    ...writtenOut,
  ],
  ...[...lessons, ...lessonsInGerman, ...costing, ...groups, ...groupsInGerman, ...variations],
  ...[...nutritions, ...larders, ...drinks, ...tables, ...logs],
];
