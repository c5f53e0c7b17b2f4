import type { Layout } from "./kit";
import { chemie } from "./visitors/chemie";
import { eisbuch } from "./visitors/eisbuch";
import { hotel } from "./visitors/hotel";
import { pops } from "./visitors/pops";
import { student } from "./visitors/student";

/** Sheets of a hotel, a chemistry class, a maker of ice pops, a student and a keen cook. */
export const visitors: readonly Layout[] = [...hotel, ...chemie, ...pops, ...student, ...eisbuch];
