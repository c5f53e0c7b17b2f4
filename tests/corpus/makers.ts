import type { Layout } from "./kit";
import { abschnittsbuecher } from "./makers/abschnitte";
import { dateien } from "./makers/dateien";
import { eigeneRohstoffbuecher } from "./makers/eigeneRohstoffe";
import { fassungsblaetter } from "./makers/fassungen";
import { laufzettelBlaetter } from "./makers/laufzettel";
import { lawWorkshops } from "./makers/lawWorkshop";
import { mixRegisters } from "./makers/mixRegister";
import { panCardSheets } from "./makers/panCards";
import { seminare } from "./makers/seminar";
import { specAndRunBooks } from "./makers/specAndRun";
import { spiritPopSheets } from "./makers/spiritPops";
import { stickTrialSheets } from "./makers/stickTrials";
import { weighTicketBooks } from "./makers/weighTickets";
import { wochenplaene } from "./makers/wochenplan";

/** Sheets of people who make frozen sweets and think them out. */
export const makers: readonly Layout[] = [
  ...[...stickTrialSheets, ...mixRegisters, ...panCardSheets, ...specAndRunBooks],
  ...[...weighTicketBooks, ...abschnittsbuecher, ...dateien, ...fassungsblaetter],
  ...[...laufzettelBlaetter, ...wochenplaene, ...lawWorkshops, ...spiritPopSheets],
  ...[...seminare, ...eigeneRohstoffbuecher],
];
