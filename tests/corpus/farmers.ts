import { tearooms } from "./farmers/acrossPage";
import { churnClubs } from "./farmers/austinClub";
import { farmDairies } from "./farmers/batchRecord";
import { cafeBoards } from "./farmers/cafeBoard";
import { corkVans } from "./farmers/corkCards";
import { foodTrucks } from "./farmers/foodTruck";
import { homestays } from "./farmers/homestay";
import { honestyBoxes } from "./farmers/honestyBox";
import { labNotebooks } from "./farmers/labNotebook";
import { lollyMakers } from "./farmers/lollyMoulds";
import { melbourneBenches } from "./farmers/melbourneBatches";
import { gardenBars } from "./farmers/pubSlush";
import { puneStalls } from "./farmers/puneStall";
import { sorbetNotebooks } from "./farmers/sorbetNotebook";
import type { Layout } from "./kit";

/** Sheets of cooks, small makers and hobbyists, each with a habit of their own. */
export const farmers: readonly Layout[] = [
  ...[...corkVans, ...melbourneBenches, ...puneStalls, ...churnClubs, ...cafeBoards],
  ...[...farmDairies, ...lollyMakers, ...sorbetNotebooks, ...tearooms, ...labNotebooks],
  ...[...gardenBars, ...foodTrucks, ...honestyBoxes, ...homestays],
];
