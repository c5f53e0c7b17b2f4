import { brennereien } from "./apart/brennerei";
import { creameries } from "./apart/creamery";
import { etiketten } from "./apart/etikett";
import { flaskPracticals } from "./apart/flasks";
import { freezerLogs } from "./apart/freezerLog";
import { hospices } from "./apart/hospice";
import { hotels } from "./apart/hotel";
import { jobSheets } from "./apart/jobSheet";
import { protokolle } from "./apart/protokoll";
import { pushcarts } from "./apart/pushcart";
import { saucepans } from "./apart/saucepan";
import { seniorenheime } from "./apart/seniorenheim";
import { trialWeeks } from "./apart/trialWeek";
import { vereinsfeste } from "./apart/vereinsfest";
import { waagen } from "./apart/waage";
import { wochenmaerkte } from "./apart/wochenmarkt";
import type { Layout } from "./kit";

/** Sheets of people who know nothing of each other: a factory, a hospice, a distillery, a hotel. */
export const apart: readonly Layout[] = [
  ...[...flaskPracticals, ...saucepans, ...trialWeeks, ...pushcarts],
  ...[...jobSheets, ...hospices, ...creameries, ...freezerLogs],
  ...[...protokolle, ...wochenmaerkte, ...hotels, ...waagen],
  ...[...seniorenheime, ...brennereien, ...etiketten, ...vereinsfeste],
];
