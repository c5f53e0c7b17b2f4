import type { Layout } from "./kit";
import { batchCards } from "./ordinary/batchCard";
import { cafeCounters } from "./ordinary/cafeCounter";
import { eisdielen } from "./ordinary/eisdiele";
import { eveningClasses } from "./ordinary/eveningClass";
import { fachklassen } from "./ordinary/fachklasse";
import { familien } from "./ordinary/familie";
import { hofeise } from "./ordinary/hofeis";
import { kantinen } from "./ordinary/kantine";
import { konditoreien } from "./ordinary/konditorei";
import { lollySheets } from "./ordinary/lollies";
import { notebooks } from "./ordinary/notebook";
import { recipeBooks } from "./ordinary/recipeBook";
import { sommerfeste } from "./ordinary/sommerfest";
import { twoMixesSheets } from "./ordinary/twoMixes";

/** Plain sheets of people who make frozen sweets, made in half an hour and kept for years. */
export const ordinary: readonly Layout[] = [
  ...[...notebooks, ...cafeCounters, ...batchCards, ...twoMixesSheets, ...recipeBooks],
  ...[...lollySheets, ...eveningClasses, ...eisdielen, ...hofeise, ...familien],
  ...[...konditoreien, ...kantinen, ...sommerfeste, ...fachklassen],
];
