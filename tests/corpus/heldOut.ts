import type { Layout } from "./kit";
import { backstuben } from "./heldOut/backstube";
import { banquets } from "./heldOut/banquet";
import { beratungen } from "./heldOut/beratung";
import { berufsschulen } from "./heldOut/berufsschule";
import { blaueHefte } from "./heldOut/blauesHeft";
import { brineTubes } from "./heldOut/brineTubes";
import { eistagebuecher } from "./heldOut/eistagebuch";
import { halbpensionen } from "./heldOut/halbpension";
import { ledgers } from "./heldOut/ledger";
import { manufakturen } from "./heldOut/manufaktur";
import { mouldRows } from "./heldOut/mouldRows";
import { postenbuecher } from "./heldOut/postenbuch";
import { sundayMarkets } from "./heldOut/sundayMarket";
import { tischgruppenSheets } from "./heldOut/tischgruppen";
import { hobbyTries } from "./heldOut/tries";
import { hospitalWards } from "./heldOut/wards";

/** Layouts of sixteen people, written apart from the audit to measure it by: who mends its rules does not look at them. */
export const heldOut: readonly Layout[] = [
  ...[...tischgruppenSheets, ...brineTubes, ...berufsschulen],
  ...[...banquets, ...postenbuecher, ...halbpensionen, ...ledgers],
  ...[...manufakturen, ...mouldRows, ...backstuben, ...eistagebuecher],
  ...[...hobbyTries, ...hospitalWards, ...beratungen, ...sundayMarkets, ...blaueHefte],
];
