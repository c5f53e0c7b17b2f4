import type { Layout } from "./kit";
import { worksheets } from "./wanderers/arbeitsblatt";
import { dietSheets } from "./wanderers/diaet";
import { fairs } from "./wanderers/fest";
import { fairSlips } from "./wanderers/festzettel";
import { coolingMixes } from "./wanderers/kaelte";
import { markings } from "./wanderers/loesungsblatt";
import { sampleSheets } from "./wanderers/muster";
import { protocols } from "./wanderers/protokoll";
import { handouts } from "./wanderers/vonhand";
import { wineries } from "./wanderers/winzer";
import { menus } from "./wanderers/winzerpreise";
import { sundays } from "./wanderers/wohnbereich";

/** Sheets of people who wander in: a vocational school, a dairy's laboratory, a care home, a winery. */
export const wanderers: readonly Layout[] = [
  ...[...worksheets, ...markings, ...sampleSheets, ...protocols, ...sundays, ...dietSheets],
  ...[...wineries, ...menus, ...coolingMixes, ...handouts, ...fairs, ...fairSlips],
];
