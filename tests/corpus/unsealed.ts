import type { Layout } from "./kit";
import { anteilsblaetter } from "./unsealed/anteile";
import { auswertungen } from "./unsealed/auswertung";
import { clubhaeuser } from "./unsealed/clubhaus";
import { coldBaths } from "./unsealed/coldBaths";
import { cookbookPages } from "./unsealed/cookbookPage";
import { counterLogs } from "./unsealed/counterLog";
import { diplomas } from "./unsealed/diploma";
import { eiscafes } from "./unsealed/eiscafe";
import { facharbeiten } from "./unsealed/facharbeit";
import { fachschulpaare } from "./unsealed/fachschulpaare";
import { familientabellen } from "./unsealed/familientabelle";
import { gasthoefe } from "./unsealed/gasthof";
import { granitaBars } from "./unsealed/granitaBar";
import { hofladenblaetter } from "./unsealed/hofladenblaetter";
import { hofmolkereien } from "./unsealed/hofmolkerei";
import { karteikaesten } from "./unsealed/karteikasten";
import { kerbsideVans } from "./unsealed/kerbsideVan";
import { konditorinnen } from "./unsealed/konditorin";
import { lagerlisten } from "./unsealed/lagerliste";
import { lehrgaenge } from "./unsealed/lehrgang";
import { sechsteKlassen } from "./unsealed/sechsteKlasse";
import { sortenlisten } from "./unsealed/sortenliste";
import { spiritEvenings } from "./unsealed/spiritEvening";
import { sugarCups } from "./unsealed/sugarCups";
import { tearooms } from "./unsealed/tearoom";
import { versuchszeilen } from "./unsealed/versuchszeilen";
import { vertretungen } from "./unsealed/vertretung";
import { weddingQuotes } from "./unsealed/weddingQuote";

/** Half of what four people wrote who had not seen the rules, held out for a time. */
export const unsealed: readonly Layout[] = [
  ...anteilsblaetter,
  ...auswertungen,
  ...clubhaeuser,
  ...coldBaths,
  ...cookbookPages,
  ...counterLogs,
  ...diplomas,
  ...eiscafes,
  ...facharbeiten,
  ...fachschulpaare,
  ...familientabellen,
  ...gasthoefe,
  ...granitaBars,
  ...hofladenblaetter,
  ...hofmolkereien,
  ...karteikaesten,
  ...kerbsideVans,
  ...konditorinnen,
  ...lagerlisten,
  ...lehrgaenge,
  ...sechsteKlassen,
  ...sortenlisten,
  ...spiritEvenings,
  ...sugarCups,
  ...tearooms,
  ...versuchszeilen,
  ...vertretungen,
  ...weddingQuotes,
];
