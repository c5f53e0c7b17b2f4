import { check } from "./functions/check";
import { component } from "./functions/component";
import { depression } from "./functions/depression";
import { freezingCurve } from "./functions/freezingCurve";
import { freezingPoint } from "./functions/freezingPoint";
import { grams } from "./functions/grams";
import { iceFraction } from "./functions/iceFraction";
import { iceTemperature } from "./functions/iceTemperature";
import { idealDepression } from "./functions/idealDepression";
import { ingredient } from "./functions/ingredient";
import { ingredients } from "./functions/ingredients";
import { massFraction } from "./functions/massFraction";
import { molality } from "./functions/molality";
import { moles } from "./functions/moles";
import { solute } from "./functions/solute";
import { solutes } from "./functions/solutes";
import { sweetness } from "./functions/sweetness";
import { target } from "./functions/target";
import { uncertainty } from "./functions/uncertainty";
import { unfrozenSolids } from "./functions/unfrozenSolids";
import { waterActivity } from "./functions/waterActivity";
import type { WorksheetFunction } from "./worksheetFunction";

/** Every function of the sheet, in the order of the help index. */
export const worksheetFunctions: readonly WorksheetFunction[] = [
  moles,
  molality,
  massFraction,
  grams,
  idealDepression,
  freezingPoint,
  depression,
  iceFraction,
  iceTemperature,
  unfrozenSolids,
  freezingCurve,
  waterActivity,
  sweetness,
  component,
  solute,
  ingredient,
  solutes,
  ingredients,
  target,
  check,
  uncertainty,
];
