import { berufskollegs } from "./caterers/berufskolleg";
import { buffets } from "./caterers/buffet";
import { colleges } from "./caterers/college";
import { eveningClasses } from "./caterers/eveningClass";
import { hofcafes } from "./caterers/hofcafe";
import { kochclubs } from "./caterers/kochclub";
import { konditoreien } from "./caterers/konditorei";
import { landfrauenSheets } from "./caterers/landfrauen";
import { marketStalls } from "./caterers/marketStall";
import { molkereien } from "./caterers/molkerei";
import { notebooks } from "./caterers/notebook";
import { strassenfeste } from "./caterers/strassenfest";
import { supperClubs } from "./caterers/supperClub";
import { technologists } from "./caterers/technologist";
import type { Layout } from "./kit";

/** People who keep several recipes in one workbook, each in a way of their own. */
export const caterers: readonly Layout[] = [
  ...[...buffets, ...eveningClasses, ...marketStalls, ...supperClubs, ...colleges],
  ...[...technologists, ...notebooks, ...hofcafes, ...kochclubs, ...strassenfeste],
  ...[...molkereien, ...konditoreien, ...berufskollegs, ...landfrauenSheets],
];
