import type { Layout } from "./kit";
import { beakerSheets } from "./scholars/beakers";
import { kursabende } from "./scholars/gruppen";
import { kaeltebaeder } from "./scholars/kaeltebad";
import { messreihen } from "./scholars/messung";
import { milcheisBlaetter } from "./scholars/milcheis";
import { tutorSheets } from "./scholars/mixed";
import { rowSheets } from "./scholars/pairs";
import { taskSheets } from "./scholars/tasks";
import { uebungen } from "./scholars/uebung";
import { protokolle } from "./scholars/unbekannt";
import { reports } from "./scholars/unknown";
import { wertBlaetter } from "./scholars/werte";

/** Class sheets with the ideal law by hand: teachers, lab assistants, students, course leaders. */
export const scholars: readonly Layout[] = [
  ...[...beakerSheets, ...rowSheets, ...tutorSheets, ...taskSheets, ...reports],
  ...[...milcheisBlaetter, ...uebungen, ...wertBlaetter, ...kaeltebaeder, ...kursabende],
  ...[...messreihen, ...protokolle],
];
