import type { Layout } from "./kit";
import { baeckereien } from "./travellers/baeckerei";
import { careHomes } from "./travellers/careHome";
import { ciderMakers } from "./travellers/cider";
import { mugCooks } from "./travellers/cups";
import { developers } from "./travellers/developer";
import { guestHouses } from "./travellers/guestHouse";
import { hauswirtschaft } from "./travellers/hauswirtschaft";
import { homeLessons } from "./travellers/homeLessons";
import { imkereien } from "./travellers/imkerei";
import { labore } from "./travellers/labor";
import { leistungskurse } from "./travellers/leistungskurs";
import { vans } from "./travellers/van";

/** Sheets of people on the road and by the road: a van, a guest house, a barn, a lab, a school. */
export const travellers: readonly Layout[] = [
  ...[...careHomes, ...homeLessons, ...vans, ...developers, ...guestHouses, ...ciderMakers],
  ...[...mugCooks, ...baeckereien, ...hauswirtschaft, ...leistungskurse, ...imkereien, ...labore],
];
