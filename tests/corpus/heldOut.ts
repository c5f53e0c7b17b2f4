import type { Layout } from "./kit";
import { anteilsblaetter } from "./heldOut/anteile";
import { auswertungen } from "./heldOut/auswertung";
import { clubhaeuser } from "./heldOut/clubhaus";
import { coldBaths } from "./heldOut/coldBaths";
import { cookbookPages } from "./heldOut/cookbookPage";
import { counterLogs } from "./heldOut/counterLog";
import { diplomas } from "./heldOut/diploma";
import { eiscafes } from "./heldOut/eiscafe";
import { facharbeiten } from "./heldOut/facharbeit";
import { fachschulpaare } from "./heldOut/fachschulpaare";
import { familientabellen } from "./heldOut/familientabelle";
import { gasthoefe } from "./heldOut/gasthof";
import { granitaBars } from "./heldOut/granitaBar";
import { hofladenblaetter } from "./heldOut/hofladenblaetter";
import { hofmolkereien } from "./heldOut/hofmolkerei";
import { karteikaesten } from "./heldOut/karteikasten";
import { kerbsideVans } from "./heldOut/kerbsideVan";
import { konditorinnen } from "./heldOut/konditorin";
import { lagerlisten } from "./heldOut/lagerliste";
import { lehrgaenge } from "./heldOut/lehrgang";
import { sechsteKlassen } from "./heldOut/sechsteKlasse";
import { sortenlisten } from "./heldOut/sortenliste";
import { spiritEvenings } from "./heldOut/spiritEvening";
import { sugarCups } from "./heldOut/sugarCups";
import { tearooms } from "./heldOut/tearoom";
import { versuchszeilen } from "./heldOut/versuchszeilen";
import { vertretungen } from "./heldOut/vertretung";
import { weddingQuotes } from "./heldOut/weddingQuote";

/**
 * Layouts to measure the audit by: half of what four people wrote who had not seen its rules, drawn by lot. Who mends
 * rules does not look at them.
 */
export const heldOut: readonly Layout[] = [
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
