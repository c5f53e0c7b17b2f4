import { boarders } from "./boarders";
import { callers } from "./callers";
import { caterers } from "./caterers";
import { guests } from "./guests";
import type { Layout } from "./kit";
import { kitchens } from "./kitchens";
import { lodgers } from "./lodgers";
import { neighbours } from "./neighbours";
import { newcomers } from "./newcomers";
import { passing } from "./passing";
import { pilgrims } from "./pilgrims";
import { ramblers } from "./ramblers";
import { regulars } from "./regulars";
import { scholars } from "./scholars";
import { strangers } from "./strangers";
import { travellers } from "./travellers";
import { unseenLayouts } from "./unseen";
import { visitors } from "./visitors";
import { wanderers } from "./wanderers";
import { baths } from "./layouts/baths";
import { cards } from "./layouts/cards";
import { lab } from "./layouts/lab";
import { scaled } from "./layouts/scaled";
import { spoons } from "./layouts/spoons";
import { stalls } from "./layouts/stall";
import { stocktaking } from "./layouts/stocktaking";
import { trials } from "./layouts/trials";
import { varieties } from "./layouts/varieties";
import { versions } from "./layouts/versions";
import { week } from "./layouts/week";
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

/** Every layout but the last ones looked at and those held out. */
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
  ...[...week, ...scaled, ...stocktaking, ...stalls, ...trials],
  ...[...versions, ...varieties, ...cards, ...spoons, ...lab, ...baths],
  ...[...kitchens, ...newcomers, ...strangers, ...visitors, ...unseenLayouts],
  ...[...guests, ...neighbours, ...regulars, ...callers],
  ...[...passing, ...lodgers, ...boarders, ...travellers],
  ...[...pilgrims, ...ramblers, ...wanderers, ...scholars, ...caterers],
];
