import type { Layout } from "./kit";
import { chemie } from "./visitors/chemie";
import { eisbuch } from "./visitors/eisbuch";
import { hotel } from "./visitors/hotel";
import { pops } from "./visitors/pops";
import { student } from "./visitors/student";

/** Layouts of five people: a pastry cook, a teacher, a maker of pops, a student and a home cook. */
export const visitors: readonly Layout[] = [...hotel, ...chemie, ...pops, ...student, ...eisbuch];
