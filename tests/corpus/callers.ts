import { blaetter } from "./callers/blatt";
import { cookery } from "./callers/cookery";
import { eismobile } from "./callers/eismobil";
import { fetes } from "./callers/fete";
import { gasthoefe } from "./callers/gasthof";
import { jugs } from "./callers/jug";
import { kicks } from "./callers/kick";
import { feste } from "./callers/gartenfest";
import { kollegs } from "./callers/kolleg";
import { orchards } from "./callers/orchard";
import { phased } from "./callers/phases";
import { suppers } from "./callers/supper";
import { tearooms } from "./callers/tearoom";
import { wannen } from "./callers/wanne";
import type { Layout } from "./kit";

/** Sheets of all kinds and many people, held out until the lots of the same days were half understood. */
export const callers: readonly Layout[] = [
  ...[...suppers, ...phased, ...fetes, ...cookery, ...jugs, ...kicks, ...tearooms, ...orchards],
  ...[...blaetter, ...eismobile, ...kollegs, ...feste, ...gasthoefe, ...wannen],
];
