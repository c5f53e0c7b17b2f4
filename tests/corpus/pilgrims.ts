import type { Layout } from "./kit";
import { berghuetten } from "./pilgrims/berghuette";
import { brennereien } from "./pilgrims/brennerei";
import { campsites } from "./pilgrims/campsite";
import { chocolatiers } from "./pilgrims/chocolatier";
import { dietitians } from "./pilgrims/dietitian";
import { fachschulen } from "./pilgrims/fachschule";
import { flatShares } from "./pilgrims/flatShare";
import { forscherAgs } from "./pilgrims/forscherAg";
import { ganztage } from "./pilgrims/ganztag";
import { parlourWeeks } from "./pilgrims/parlours";
import { sixthForms } from "./pilgrims/sixthForm";
import { versuchsplaene } from "./pilgrims/versuchsplan";

/** Sheets of people on the road: a campsite, a hut, a still, two parlours, a hospital, four schools. */
export const pilgrims: readonly Layout[] = [
  ...[...campsites, ...chocolatiers, ...sixthForms, ...flatShares, ...dietitians],
  ...[...parlourWeeks, ...berghuetten, ...forscherAgs, ...brennereien, ...ganztage],
  ...[...versuchsplaene, ...fachschulen],
];
