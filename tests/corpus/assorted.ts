import { bagIces } from "./assorted/bagIce";
import { molkereien } from "./assorted/chargenDatei";
import { farmDairies } from "./assorted/farmDairy";
import { fetes } from "./assorted/fete";
import { foodTrucks } from "./assorted/foodTruck";
import { gastropubs } from "./assorted/gastropub";
import { hofverkaeufe } from "./assorted/hofverkauf";
import { hotels } from "./assorted/hotel";
import { konditorschulen } from "./assorted/konditorschule";
import { pilotPlants } from "./assorted/pilotPlant";
import { praktika } from "./assorted/praktikum";
import { seniorenheime } from "./assorted/seniorenheim";
import { stieleise } from "./assorted/stieleis";
import { trialBooks } from "./assorted/trialBook";
import type { Layout } from "./kit";

/** Sheets of all kinds of people: teachers, cooks, makers, sellers. */
export const assorted: readonly Layout[] = [
  ...[...bagIces, ...konditorschulen, ...praktika, ...foodTrucks, ...hotels, ...fetes],
  ...[...hofverkaeufe, ...molkereien, ...gastropubs, ...trialBooks, ...pilotPlants],
  ...[...farmDairies, ...seniorenheime, ...stieleise],
];
