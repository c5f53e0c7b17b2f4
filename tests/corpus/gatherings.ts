import { prozentblaetterLayouts } from "./gatherings/prozentblaetter";
import { kursabende } from "./gatherings/kursabend";
import { becherkalkulationen } from "./gatherings/becherkalkulation";
import { sammlungen } from "./gatherings/sammlung";
import { handouts } from "./gatherings/saturdayHandout";
import { popCostings } from "./gatherings/popCosting";
import { batchBooks } from "./gatherings/batchBook";
import { projekttage } from "./gatherings/klasseNeun";
import { protokolle } from "./gatherings/protokoll";
import { classGroups } from "./gatherings/groupsOfFour";
import { coolingBathSheets } from "./gatherings/coolingBaths";
import { kryoskopien } from "./gatherings/kryoskopie";
import { pagesOfWorking } from "./gatherings/pageOfWorking";
import { sugarPracticals } from "./gatherings/sugarPractical";
import type { Layout } from "./kit";

/** Sheets of people who teach and make frozen sweets: classes, courses, costings. */
export const gatherings: readonly Layout[] = [
  ...sugarPracticals,
  ...pagesOfWorking,
  ...coolingBathSheets,
  ...classGroups,
  ...kryoskopien,
  ...projekttage,
  ...protokolle,
  ...handouts,
  ...popCostings,
  ...batchBooks,
  ...prozentblaetterLayouts,
  ...kursabende,
  ...becherkalkulationen,
  ...sammlungen,
];
