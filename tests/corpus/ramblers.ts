import type { Layout } from "./kit";
import { bakers } from "./ramblers/bakersPerCent";
import { campLogs } from "./ramblers/campLog";
import { camps } from "./ramblers/campPots";
import { ciderSorbets } from "./ramblers/ciderSorbet";
import { hallHelpers } from "./ramblers/hallCups";
import { hallShops } from "./ramblers/hallShopping";
import { labHandouts } from "./ramblers/labHandout";
import { marksheets } from "./ramblers/marksheet";
import { pressRanges } from "./ramblers/pressRange";
import { sugarSwaps } from "./ramblers/sugarSwap";
import { tubCosts } from "./ramblers/tubCost";
import { wards } from "./ramblers/wardPortions";

/** Sheets of a ward kitchen, a village hall, a bakery, a teaching lab, a cider house and a camp. */
export const ramblers: readonly Layout[] = [
  ...[...wards, ...sugarSwaps, ...hallHelpers, ...hallShops, ...tubCosts, ...bakers],
  ...[...labHandouts, ...marksheets, ...ciderSorbets, ...pressRanges, ...camps, ...campLogs],
];
