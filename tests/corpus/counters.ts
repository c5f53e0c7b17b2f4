import { farmCafes } from "./counters/farmCafe";
import { hotelPastries } from "./counters/hotelPastry";
import { kantinen } from "./counters/kantine";
import { lollyMakers } from "./counters/lollyMaker";
import { partyservices } from "./counters/partyservice";
import { schoolFairs } from "./counters/schoolFair";
import { seasideParlours } from "./counters/seasideParlour";
import type { Layout } from "./kit";

/** Sheets of people who sell over a counter: cafés, caterers, dairies, a hotel, a canteen. */
export const counters: readonly Layout[] = [
  ...hotelPastries,
  ...seasideParlours,
  ...lollyMakers,
  ...farmCafes,
  ...schoolFairs,
  ...partyservices,
  ...kantinen,
];
