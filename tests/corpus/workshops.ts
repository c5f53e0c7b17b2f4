import type { Layout } from "./kit";
import { chargenDateien } from "./workshops/chargenDatei";
import { dairyVats } from "./workshops/dairyVats";
import { exportSpecs } from "./workshops/exportSpecs";
import { factoryTrials } from "./workshops/factoryTrials";
import { floorPlans } from "./workshops/floorPlan";
import { hofeisKalkulationen } from "./workshops/hofeisKalkulation";
import { hotelBecher } from "./workshops/hotelBecher";
import { kantinenPlaene } from "./workshops/kantinenPlan";
import { menuFiles } from "./workshops/menuFile";
import { molkereiSpezifikationen } from "./workshops/molkereiSpezifikation";
import { parlourCostings } from "./workshops/parlourCosting";
import { sortenWochen } from "./workshops/sortenWoche";
import { summerParties } from "./workshops/summerParty";
import { teststellen } from "./workshops/teststelle";

/** Sheets of small producers: parlours, dairies, caterers, kitchens with a menu. */
export const workshops: readonly Layout[] = [
  ...[...parlourCostings, ...molkereiSpezifikationen, ...summerParties, ...sortenWochen],
  ...[...factoryTrials, ...kantinenPlaene, ...menuFiles, ...hofeisKalkulationen],
  ...[...chargenDateien, ...hotelBecher, ...exportSpecs, ...teststellen, ...floorPlans],
  ...dairyVats,
];
