import { camps } from "./beyond/camp";
import { eveningCourses } from "./beyond/evenings";
import { projektwochen } from "./beyond/karten";
import { schulkuechen } from "./beyond/kueche";
import { lernfelder } from "./beyond/lernfeld";
import { mensen } from "./beyond/mensa";
import { pots } from "./beyond/pot";
import { speiseplaene } from "./beyond/speiseplan";
import { tubeSheets } from "./beyond/tubes";
import type { Layout } from "./kit";

/** Sheets of people who teach or learn about frozen sweets, or cook them for others. */
export const beyond: readonly Layout[] = [
  ...[...tubeSheets, ...lernfelder, ...projektwochen],
  ...[...camps, ...eveningCourses, ...speiseplaene],
  ...[...pots, ...schulkuechen, ...mensen],
];
