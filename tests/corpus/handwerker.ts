import { berghotels } from "./handwerker/berghotel";
import { brennereien } from "./handwerker/brennerei";
import { eiskellers } from "./handwerker/eiskeller";
import { fachkunden } from "./handwerker/fachkunde";
import { festformen } from "./handwerker/festform";
import { heurige } from "./handwerker/heuriger";
import { hofkaesereien } from "./handwerker/hofkaeserei";
import { kantonsschulen } from "./handwerker/kantonsschule";
import { kochabende } from "./handwerker/kochabend";
import { lagerkuechen } from "./handwerker/lagerkueche";
import { lehrlingsmappen } from "./handwerker/lehrlingsmappe";
import { meisterbetriebe } from "./handwerker/meisterbetrieb";
import { phasenblaetter } from "./handwerker/phasen";
import { sirupregale } from "./handwerker/sirupregal";
import { versuchshefte } from "./handwerker/versuchsheft";
import { waagendateien } from "./handwerker/waagendatei";
import type { Layout } from "./kit";

/** Sheets of people who make things by hand: apprentices, a tavern, a mountain hotel, a farm. */
export const handwerker: readonly Layout[] = [
  ...[...lehrlingsmappen, ...heurige, ...berghotels, ...kochabende, ...meisterbetriebe],
  ...[...versuchshefte, ...brennereien, ...sirupregale, ...kantonsschulen, ...festformen],
  ...[...eiskellers, ...lagerkuechen, ...hofkaesereien, ...waagendateien, ...fachkunden],
  ...phasenblaetter,
];
