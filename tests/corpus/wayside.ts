import type { Layout } from "./kit";
import { berufsschulen } from "./wayside/berufsschule";
import { brennereien } from "./wayside/brennerei";
import { canteens } from "./wayside/canteen";
import { foodTrucks } from "./wayside/foodTruck";
import { hofcafes } from "./wayside/hofcafe";
import { imkereien } from "./wayside/imkerei";
import { journals } from "./wayside/journal";
import { kochgruppenBlaetter } from "./wayside/kochgruppen";
import { marmeladen } from "./wayside/marmelade";
import { messprotokolle } from "./wayside/messprotokoll";
import { nightClasses } from "./wayside/nightClass";
import { pubKitchens } from "./wayside/pubPuds";
import { syrupBenches } from "./wayside/syrupBench";
import { vereinsfeste } from "./wayside/vereinsfest";

/** Sheets found by the wayside: of people who would rather not be at a computer. */
export const wayside: readonly Layout[] = [
  ...[...pubKitchens, ...hofcafes, ...vereinsfeste, ...canteens, ...imkereien],
  ...[
    ...foodTrucks,
    ...brennereien,
    ...journals,
    ...messprotokolle,
    ...nightClasses,
    ...berufsschulen,
  ],
  ...[...syrupBenches, ...kochgruppenBlaetter, ...marmeladen],
];
