import type { Layout } from "./kit";
import { berufsschulen } from "./pantries/berufsschule";
import { eiswaegen } from "./pantries/eiswagen";
import { festivals } from "./pantries/festival";
import { foodTrucks } from "./pantries/foodTruck";
import { galleys } from "./pantries/galley";
import { hofkuehlregale } from "./pantries/hofkuehlregal";
import { hotelPlates } from "./pantries/hotelPlate";
import { hotelSchools } from "./pantries/hotelSchool";
import { klinikkuechen } from "./pantries/klinikkueche";
import { klosterkuechen } from "./pantries/klosterkueche";
import { partyservices } from "./pantries/partyservice";
import { prepSections } from "./pantries/prepSections";
import { schulmensen } from "./pantries/schulmensa";
import { tubLabels } from "./pantries/tubLabels";
import { versuchsraeume } from "./pantries/versuchsraum";

/** Sheets of those who keep a pantry: a galley, a cloister, a clinic, a truck. */
export const pantries: readonly Layout[] = [
  ...[...galleys, ...klosterkuechen, ...klinikkuechen, ...foodTrucks],
  ...[...festivals, ...eiswaegen, ...hotelPlates, ...versuchsraeume],
  ...[...schulmensen, ...tubLabels, ...partyservices, ...berufsschulen],
  ...[...prepSections, ...hofkuehlregale, ...hotelSchools],
];
