import { batchRecords } from "./afar/batchRecord";
import { benchTrialSheets } from "./afar/benchTrials";
import { chargenblaetter } from "./afar/chargenblatt";
import { kugelpreise } from "./afar/kugelpreis";
import { lollyStalls } from "./afar/lollyStall";
import { sortenlisten } from "./afar/sortenliste";
import { trainingDays } from "./afar/trainingDay";
import { tubCostings } from "./afar/tubCosts";
import { vitrinenblaetter } from "./afar/vitrinen";
import type { Layout } from "./kit";

/** Sheets of people who make, try out and sell frozen sweets far from each other. */
export const afar: readonly Layout[] = [
  ...[...lollyStalls, ...tubCostings, ...batchRecords, ...benchTrialSheets],
  ...[...trainingDays, ...kugelpreise, ...chargenblaetter, ...vitrinenblaetter],
  ...sortenlisten,
];
