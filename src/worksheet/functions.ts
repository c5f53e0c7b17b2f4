import { abvToMassFraction } from "./functions/abvToMassFraction";
import { amountFor } from "./functions/amountFor";
import { boilingPoint } from "./functions/boilingPoint";
import { brix } from "./functions/brix";
import { cautions } from "./functions/cautions";
import { check } from "./functions/check";
import { component } from "./functions/component";
import { composition } from "./functions/composition";
import { concentration } from "./functions/concentration";
import { density } from "./functions/density";
import { depression } from "./functions/depression";
import { freezingCurve } from "./functions/freezingCurve";
import { freezingPoint } from "./functions/freezingPoint";
import { freezingTime } from "./functions/freezingTime";
import { glassTransition } from "./functions/glassTransition";
import { grams } from "./functions/grams";
import { iceFraction } from "./functions/iceFraction";
import { iceTemperature } from "./functions/iceTemperature";
import { idealDepression } from "./functions/idealDepression";
import { idealElevation } from "./functions/idealElevation";
import { ingredient } from "./functions/ingredient";
import { ingredients } from "./functions/ingredients";
import { massFraction } from "./functions/massFraction";
import { maxFreezeConcentrated } from "./functions/maxFreezeConcentrated";
import { molality } from "./functions/molality";
import { molarMassFrom } from "./functions/molarMassFrom";
import { moles } from "./functions/moles";
import { osmolality } from "./functions/osmolality";
import { osmoticPressure } from "./functions/osmoticPressure";
import { solute } from "./functions/solute";
import { solutes } from "./functions/solutes";
import { sweetness } from "./functions/sweetness";
import { target } from "./functions/target";
import { texture } from "./functions/texture";
import { uncertainty } from "./functions/uncertainty";
import { unfrozenSolids } from "./functions/unfrozenSolids";
import { waterActivity } from "./functions/waterActivity";
import { working } from "./functions/working";
import type { WorksheetFunction } from "./worksheetFunction";

/** Every function of the sheet, in the order of the help index. */
export const worksheetFunctions: readonly WorksheetFunction[] = [
  moles,
  molality,
  massFraction,
  concentration,
  abvToMassFraction,
  grams,
  idealDepression,
  idealElevation,
  molarMassFrom,
  freezingPoint,
  depression,
  iceFraction,
  iceTemperature,
  unfrozenSolids,
  freezingCurve,
  glassTransition,
  maxFreezeConcentrated,
  texture,
  freezingTime,
  waterActivity,
  boilingPoint,
  osmoticPressure,
  osmolality,
  density,
  brix,
  sweetness,
  component,
  composition,
  solute,
  ingredient,
  solutes,
  ingredients,
  target,
  amountFor,
  check,
  uncertainty,
  working,
  cautions,
];
