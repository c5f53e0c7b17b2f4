import type { Layout } from "./kit";
import { chefSchools } from "./tenants/chefSchool";
import { eiswerkstaetten } from "./tenants/eiswerkstatt";
import { freibaeder } from "./tenants/freibad";
import { frozenLines } from "./tenants/frozenLine";
import { kraeuterkuechen } from "./tenants/kraeuterkueche";
import { lieferdienste } from "./tenants/lieferdienst";
import { nightSchools } from "./tenants/nightSchool";
import { popUps } from "./tenants/popUp";
import { realschulen } from "./tenants/realschule";
import { sixthForms } from "./tenants/sixthForm";
import { tagungshaeuser } from "./tenants/tagungshaus";
import { villageCafes } from "./tenants/villageCafe";
import { weekendCooks } from "./tenants/weekendCook";
import { wineBars } from "./tenants/wineBar";

/** Sheets of a night school, a factory, a café, teachers, cooks, a wine bar, a lido, a conference house. */
export const tenants: readonly Layout[] = [
  ...[...nightSchools, ...frozenLines, ...villageCafes, ...sixthForms, ...chefSchools],
  ...[...weekendCooks, ...wineBars, ...popUps, ...realschulen, ...eiswerkstaetten],
  ...[...freibaeder, ...kraeuterkuechen, ...tagungshaeuser, ...lieferdienste],
];
