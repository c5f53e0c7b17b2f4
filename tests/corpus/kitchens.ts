import type { Layout } from "./kit";
import { bars } from "./kitchens/bars";
import { cards } from "./kitchens/cards";
import { counters } from "./kitchens/counters";
import { courses } from "./kitchens/courses";
import { exercises } from "./kitchens/exercises";
import { exportFiles } from "./kitchens/exports";
import { formulas } from "./kitchens/formulas";
import { ledgers } from "./kitchens/ledgers";
import { pastry } from "./kitchens/pastry";
import { practicals } from "./kitchens/practicals";
import { producers } from "./kitchens/producers";
import { shelves } from "./kitchens/shelves";

/** The ordinary sheets of cooks and teachers. */
export const kitchens: readonly Layout[] = [
  ...[...pastry, ...courses, ...producers, ...practicals, ...exercises],
  ...[...ledgers, ...formulas, ...bars, ...counters, ...shelves, ...cards, ...exportFiles],
];
