import type { Layout } from "./kit";
import { backstuben } from "./shelved/backstube";
import { banquets } from "./shelved/banquet";
import { beratungen } from "./shelved/beratung";
import { berufsschulen } from "./shelved/berufsschule";
import { blaueHefte } from "./shelved/blauesHeft";
import { brineTubes } from "./shelved/brineTubes";
import { eistagebuecher } from "./shelved/eistagebuch";
import { halbpensionen } from "./shelved/halbpension";
import { ledgers } from "./shelved/ledger";
import { manufakturen } from "./shelved/manufaktur";
import { mouldRows } from "./shelved/mouldRows";
import { postenbuecher } from "./shelved/postenbuch";
import { sundayMarkets } from "./shelved/sundayMarket";
import { tischgruppenSheets } from "./shelved/tischgruppen";
import { hobbyTries } from "./shelved/tries";
import { hospitalWards } from "./shelved/wards";

/** Sheets of sixteen people of all kinds, held out for a time. */
export const shelved: readonly Layout[] = [
  ...[...tischgruppenSheets, ...brineTubes, ...berufsschulen],
  ...[...banquets, ...postenbuecher, ...halbpensionen, ...ledgers],
  ...[...manufakturen, ...mouldRows, ...backstuben, ...eistagebuecher],
  ...[...hobbyTries, ...hospitalWards, ...beratungen, ...sundayMarkets, ...blaueHefte],
];
