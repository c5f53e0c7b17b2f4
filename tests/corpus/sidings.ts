import type { Layout } from "./kit";
import { fractionFiles } from "./sidings/fractionFile";
import { jahreszeiten } from "./sidings/jahreszeiten";
import { kioskTrials } from "./sidings/kioskTrials";
import { konditorbloecke } from "./sidings/konditorbloecke";
import { recipeStrips } from "./sidings/recipeStrips";
import { shopCards } from "./sidings/shopCards";
import { weighIns } from "./sidings/weighIns";

/** Sheets with recipes in columns, in rows, under each other and on several sheets. */
export const sidings: readonly Layout[] = [
  ...kioskTrials,
  ...weighIns,
  ...shopCards,
  ...konditorbloecke,
  ...fractionFiles,
  ...jahreszeiten,
  ...recipeStrips,
];
