import type { Layout } from "./kit";
import { allotments } from "./passing/allotment";
import { caterings } from "./passing/catering";
import { coupeSheets } from "./passing/coupes";
import { lagerwoche } from "./passing/ferienlager";
import { homeCook } from "./passing/homeCook";
import { jarLessons } from "./passing/jars";
import { kantinen } from "./passing/kantine";
import { karteien } from "./passing/kartei";
import { projektwoche } from "./passing/projektwoche";
import { school } from "./passing/school";
import { trialRows } from "./passing/trialRows";

/** Sheets of people who pass by once: a café, a school, a caterer, a summer camp. */
export const passing: readonly Layout[] = [
  ...[...coupeSheets, ...trialRows, ...school, ...jarLessons, ...homeCook, ...allotments],
  ...[...projektwoche, ...karteien, ...caterings, ...kantinen, ...lagerwoche],
];
