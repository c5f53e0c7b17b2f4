import type { Layout } from "./kit";
import { dinners } from "./lodgers/dinners";
import { hatches } from "./lodgers/hatch";
import { lecturers } from "./lodgers/lecturer";
import { engineers } from "./lodgers/matrix";
import { pubs } from "./lodgers/pub";
import { students } from "./lodgers/student";

/** Sheets of people who stay a while: caterers, lecturers, farmers, hobbyists, cooks, students. */
export const lodgers: readonly Layout[] = [
  ...[...dinners, ...lecturers, ...hatches, ...engineers, ...pubs, ...students],
];
