import type { Layout } from "./kit";
import { cafePercents } from "./harvests/cafePercent";
import { cupMakers } from "./harvests/cupMaker";
import { eiscafes } from "./harvests/eiscafe";
import { eisdielen } from "./harvests/eisdiele";
import { farmIceKitchens } from "./harvests/farmIceKitchen";
import { flavourRows } from "./harvests/flavourRows";
import { gardenParties } from "./harvests/gardenParty";
import { haushefte } from "./harvests/hausheft";
import { hoflaeden } from "./harvests/hofladen";
import { kochschulen } from "./harvests/kochschule";
import { notebooks } from "./harvests/notebook";
import { partyservices } from "./harvests/partyservice";
import { trialSheets } from "./harvests/trials";
import { versuchsreihen } from "./harvests/versuchsreihe";

/** Sheets kept for years: costings and per cent sheets, and recipes laid out in columns. */
export const harvests: readonly Layout[] = [
  ...[...farmIceKitchens, ...cafePercents, ...gardenParties, ...cupMakers],
  ...[...hoflaeden, ...eiscafes, ...partyservices],
  ...[...trialSheets, ...notebooks, ...flavourRows],
  ...[...versuchsreihen, ...haushefte, ...eisdielen, ...kochschulen],
];
