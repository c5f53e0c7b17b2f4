import { careHomes } from "./heldOut/careHome";
import { coPackers } from "./heldOut/coPacker";
import { dampferKuechen } from "./heldOut/dampfer";
import { dentalNurses } from "./heldOut/dental";
import { feinkostlaeden } from "./heldOut/feinkost";
import { homeSchools } from "./heldOut/homeSchool";
import { kaelteklassen } from "./heldOut/kaelte";
import { kitas } from "./heldOut/kita";
import { marquees } from "./heldOut/marquee";
import { nachhilfen } from "./heldOut/nachhilfe";
import { obstvereine } from "./heldOut/obstverein";
import { popMakers } from "./heldOut/popMaker";
import { rentnerKeller } from "./heldOut/rentner";
import { scoutCamps } from "./heldOut/scouts";
import { segelclubs } from "./heldOut/segelclub";
import { theatres } from "./heldOut/theatre";
import type { Layout } from "./kit";

/** Layouts that were written apart from the audit, to measure it by: who mends its rules does not look at them. */
export const heldOut: readonly Layout[] = [
  ...[...theatres, ...coPackers, ...careHomes, ...homeSchools, ...scoutCamps, ...marquees],
  ...[...dentalNurses, ...popMakers, ...dampferKuechen, ...kaelteklassen, ...nachhilfen],
  ...[...segelclubs, ...feinkostlaeden, ...kitas, ...obstvereine, ...rentnerKeller],
];
