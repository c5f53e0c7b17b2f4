import type { Layout } from "./kit";
import { bars } from "./reserve/bars";
import { cards } from "./reserve/cards";
import { counters } from "./reserve/counters";
import { courses } from "./reserve/courses";
import { exercises } from "./reserve/exercises";
import { exportFiles } from "./reserve/exports";
import { formulas } from "./reserve/formulas";
import { ledgers } from "./reserve/ledgers";
import { pastry } from "./reserve/pastry";
import { practicals } from "./reserve/practicals";
import { producers } from "./reserve/producers";
import { shelves } from "./reserve/shelves";

/** Layouts whose misses nobody looks at: only their figures count. */
export const reserveLayouts: readonly Layout[] = [
  ...[...pastry, ...courses, ...producers, ...practicals, ...exercises],
  ...[...ledgers, ...formulas, ...bars, ...counters, ...shelves, ...cards, ...exportFiles],
];
