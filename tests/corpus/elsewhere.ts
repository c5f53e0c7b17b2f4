import { frostbecher } from "./elsewhere/frostbecher";
import { karten } from "./elsewhere/karten";
import { kursblatt } from "./elsewhere/kursblatt";
import { lollyStrip } from "./elsewhere/lollyStrip";
import { mixBook } from "./elsewhere/mixBook";
import { pairsOfPupils } from "./elsewhere/pairsOfPupils";
import { pastrySection } from "./elsewhere/pastrySection";
import { phasen } from "./elsewhere/phasen";
import { scoopVan } from "./elsewhere/scoopVan";
import { sortenInZeilen } from "./elsewhere/sortenInZeilen";
import { stadtfest } from "./elsewhere/stadtfest";
import { stationenarbeit } from "./elsewhere/stationen";
import { theoryHour } from "./elsewhere/theoryHour";
import { tubMoney } from "./elsewhere/tubMoney";
import { twoTrials } from "./elsewhere/twoTrials";
import { versuchsdatei } from "./elsewhere/versuchsdatei";
import type { Layout } from "./kit";

/** Sheets of people elsewhere: a van, a creamery, a school, a club, a laboratory, a farm's café. */
export const elsewhere: readonly Layout[] = [
  ...[...tubMoney, ...pastrySection, ...twoTrials, ...lollyStrip, ...scoopVan, ...mixBook],
  ...[...pairsOfPupils, ...theoryHour, ...stationenarbeit, ...sortenInZeilen, ...karten],
  ...[...versuchsdatei, ...stadtfest, ...phasen, ...frostbecher, ...kursblatt],
];
