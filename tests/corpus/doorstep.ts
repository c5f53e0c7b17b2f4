import { ausbilderBlaetter } from "./doorstep/ausbilder";
import { backstuben } from "./doorstep/backstube";
import { cookingLessons } from "./doorstep/cookingScience";
import { cornerCafes } from "./doorstep/cornerCafe";
import { freezerBooks } from "./doorstep/freezerBook";
import { gasthaeuser } from "./doorstep/gasthaus";
import { geburtstage } from "./doorstep/geburtstag";
import { hofmanufakturen } from "./doorstep/hofmanufaktur";
import { marktstaende } from "./doorstep/marktstand";
import { messwertBlaetter } from "./doorstep/messwerte";
import { rowingClubs } from "./doorstep/rowingClub";
import { sweetSections } from "./doorstep/sweetSection";
import { tubMakers } from "./doorstep/tubMaker";
import { worksCanteens } from "./doorstep/worksCanteen";
import type { Layout } from "./kit";

/** Sheets of people next door: kitchens, makers, sellers, families, a club, teachers, a trainer. */
export const doorstep: readonly Layout[] = [
  ...[...sweetSections, ...gasthaeuser, ...hofmanufakturen, ...tubMakers],
  ...[...backstuben, ...cornerCafes, ...marktstaende, ...worksCanteens],
  ...[...geburtstage, ...freezerBooks, ...rowingClubs],
  ...[...ausbilderBlaetter, ...messwertBlaetter, ...cookingLessons],
];
