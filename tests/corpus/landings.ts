import type { Layout } from "./kit";
import { afternoonTeas } from "./landings/afternoonTea";
import { barges } from "./landings/barge";
import { benchTrialSheets } from "./landings/benchTrials";
import { berghotels } from "./landings/berghotel";
import { berufsfachschulen } from "./landings/berufsfachschule";
import { eislaeden } from "./landings/eisladen";
import { foodSchools } from "./landings/foodSchool";
import { kitchenTables } from "./landings/kitchenTable";
import { lidos } from "./landings/lido";
import { manufakturen } from "./landings/manufaktur";
import { omasBlaetter } from "./landings/omasBlatt";
import { runSheetFiles } from "./landings/runSheets";
import { strandcafes } from "./landings/strandcafe";
import { versuchskuechen } from "./landings/versuchskueche";

/** Sheets kept for years: costings, mixes in per cent, recipes in columns and under each other. */
export const landings: readonly Layout[] = [
  ...[...lidos, ...barges, ...afternoonTeas, ...runSheetFiles, ...strandcafes, ...manufakturen],
  ...[...berghotels, ...kitchenTables, ...benchTrialSheets, ...foodSchools, ...omasBlaetter],
  ...[...eislaeden, ...berufsfachschulen, ...versuchskuechen],
];
