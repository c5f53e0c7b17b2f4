import type { Layout } from "./kit";
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
];
