import { careHomes } from "./opened/careHome";
import { coPackers } from "./opened/coPacker";
import { dampferKuechen } from "./opened/dampfer";
import { dentalNurses } from "./opened/dental";
import { feinkostlaeden } from "./opened/feinkost";
import { homeSchools } from "./opened/homeSchool";
import { kaelteklassen } from "./opened/kaelte";
import { kitas } from "./opened/kita";
import { marquees } from "./opened/marquee";
import { nachhilfen } from "./opened/nachhilfe";
import { obstvereine } from "./opened/obstverein";
import { popMakers } from "./opened/popMaker";
import { rentnerKeller } from "./opened/rentner";
import { scoutCamps } from "./opened/scouts";
import { segelclubs } from "./opened/segelclub";
import { theatres } from "./opened/theatre";
import type { Layout } from "./kit";

/** Layouts that measured the audit unseen for several lots of others, until they were looked at. */
export const opened: readonly Layout[] = [
  ...[...theatres, ...coPackers, ...careHomes, ...homeSchools, ...scoutCamps, ...marquees],
  ...[...dentalNurses, ...popMakers, ...dampferKuechen, ...kaelteklassen, ...nachhilfen],
  ...[...segelclubs, ...feinkostlaeden, ...kitas, ...obstvereine, ...rentnerKeller],
];
