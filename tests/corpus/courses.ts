import { answerKeys } from "./courses/answerKey";
import { dairyRows } from "./courses/dairyRows";
import { eveningPans } from "./courses/eveningPans";
import { hauswirtschaft } from "./courses/hauswirtschaft";
import { konditorklassen } from "./courses/konditorklasse";
import { messreihen } from "./courses/messreihe";
import { plateauSheets } from "./courses/plateau";
import { ptaSchulen } from "./courses/ptaSchule";
import { rechenwege } from "./courses/rechenweg";
import { residualSheets } from "./courses/residuals";
import { stationCards } from "./courses/stations";
import { technika } from "./courses/technikum";
import { twoIces } from "./courses/twoIces";
import { vhsEis } from "./courses/vhsEis";
import type { Layout } from "./kit";

/** Workbooks of people who teach how freezing points are lowered and how ices are balanced. */
export const courses: readonly Layout[] = [
  ...[...plateauSheets, ...eveningPans, ...residualSheets, ...answerKeys],
  ...[...messreihen, ...rechenwege, ...ptaSchulen],
  ...[...stationCards, ...twoIces, ...dairyRows],
  ...[...vhsEis, ...konditorklassen, ...hauswirtschaft, ...technika],
];
