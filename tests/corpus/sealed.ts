import type { Layout } from "./kit";
import { backstuben } from "./sealed/backstube";
import { banquets } from "./sealed/banquet";
import { beratungen } from "./sealed/beratung";
import { berufsschulen } from "./sealed/berufsschule";
import { blaueHefte } from "./sealed/blauesHeft";
import { brineTubes } from "./sealed/brineTubes";
import { eistagebuecher } from "./sealed/eistagebuch";
import { halbpensionen } from "./sealed/halbpension";
import { ledgers } from "./sealed/ledger";
import { manufakturen } from "./sealed/manufaktur";
import { mouldRows } from "./sealed/mouldRows";
import { postenbuecher } from "./sealed/postenbuch";
import { sundayMarkets } from "./sealed/sundayMarket";
import { tischgruppenSheets } from "./sealed/tischgruppen";
import { hobbyTries } from "./sealed/tries";
import { hospitalWards } from "./sealed/wards";

/** Sheets of sixteen people who do not know each other. */
export const sealed: readonly Layout[] = [
  ...[...tischgruppenSheets, ...brineTubes, ...berufsschulen],
  ...[...banquets, ...postenbuecher, ...halbpensionen, ...ledgers],
  ...[...manufakturen, ...mouldRows, ...backstuben, ...eistagebuecher],
  ...[...hobbyTries, ...hospitalWards, ...beratungen, ...sundayMarkets, ...blaueHefte],
];
