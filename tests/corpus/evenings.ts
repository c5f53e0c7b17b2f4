import { columnsInKilosSheets } from "./evenings/columnsInKilos";
import { freezerPopSheets } from "./evenings/freezerPops";
import { handouts } from "./evenings/handouts";
import { handzettel } from "./evenings/handzettel";
import { kaeltebaeder } from "./evenings/kaeltebad";
import { labCourses } from "./evenings/labCourse";
import { loesungsblaetter } from "./evenings/loesungsblatt";
import { oldCostings } from "./evenings/oldCostings";
import { pavements } from "./evenings/pavement";
import { prozentspalten } from "./evenings/prozentspalten";
import { sortenbuecher } from "./evenings/sortenbuch";
import { stieleis } from "./evenings/stieleis";
import { sugarTables } from "./evenings/sugarTable";
import { zuckerarten } from "./evenings/zuckerarten";
import type { Layout } from "./kit";

/** Sheets of evening classes and of people who teach frozen sweets. */
export const evenings: readonly Layout[] = [
  ...[...sugarTables, ...pavements, ...labCourses, ...freezerPopSheets],
  ...[...kaeltebaeder, ...zuckerarten, ...loesungsblaetter],
  ...[...handouts, ...oldCostings, ...columnsInKilosSheets],
  ...[...handzettel, ...stieleis, ...prozentspalten, ...sortenbuecher],
];
