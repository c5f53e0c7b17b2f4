import type { Layout } from "./kit";
import { bakeryShops } from "./strollers/bakeryShop";
import { benchSheets } from "./strollers/benchSheet";
import { communityKitchens } from "./strollers/communityKitchen";
import { iceBikes } from "./strollers/iceBike";
import { kiosks } from "./strollers/kiosk";
import { kliniken } from "./strollers/klinik";
import { lehrkuechen } from "./strollers/lehrkueche";
import { lollyLessons } from "./strollers/lollyLesson";
import { milchlaeden } from "./strollers/milchladen";
import { mostereien } from "./strollers/mosterei";
import { roadSalts } from "./strollers/roadSalt";
import { sportheime } from "./strollers/sportheim";
import { tastings } from "./strollers/tasting";
import { weingueter } from "./strollers/weingut";

/** Sheets of people met on a walk: an ice bike, a bakery, a kiosk, a clinic, a press house. */
export const strollers: readonly Layout[] = [
  ...[...iceBikes, ...bakeryShops, ...benchSheets, ...tastings, ...kiosks, ...roadSalts],
  ...[...lollyLessons, ...communityKitchens, ...sportheime, ...milchlaeden, ...weingueter],
  ...[...lehrkuechen, ...mostereien, ...kliniken],
];
