import type { Rule } from "./rule";
import { abvAsMass } from "./rules/abvAsMass";
import { alcoholTooMuch } from "./rules/alcoholTooMuch";
import { ambiguousIngredient } from "./rules/ambiguousIngredient";
import { cautionNotNamed } from "./rules/cautionNotNamed";
import { circularReference } from "./rules/circularReference";
import { cryoscopicConstant } from "./rules/cryoscopicConstant";
import { depressionSign } from "./rules/depressionSign";
import { errorValue } from "./rules/errorValue";
import { filteredRowsInSum } from "./rules/filteredRowsInSum";
import { formulaOverwritten } from "./rules/formulaOverwritten";
import { hardCodedNumber } from "./rules/hardCodedNumber";
import { hiddenAmount } from "./rules/hiddenAmount";
import { hydrateNotStated } from "./rules/hydrateNotStated";
import { iceBasis } from "./rules/iceBasis";
import { idealLawOff } from "./rules/idealLawOff";
import { inclusionAsSolute } from "./rules/inclusionAsSolute";
import { inconsistentFormula } from "./rules/inconsistentFormula";
import { inputWithoutUnit } from "./rules/inputWithoutUnit";
import { lactoseSandy } from "./rules/lactoseSandy";
import { lactoseTwice } from "./rules/lactoseTwice";
import { manualCalculation } from "./rules/manualCalculation";
import { manySingleCalls } from "./rules/manySingleCalls";
import { massUnit } from "./rules/massUnit";
import { missesTarget } from "./rules/missesTarget";
import { moreDigits } from "./rules/moreDigits";
import { nameWithOddLetters } from "./rules/nameWithOddLetters";
import { outsideSource } from "./rules/outsideSource";
import { ownIngredientsRefused } from "./rules/ownIngredientsRefused";
import { particlesMissing } from "./rules/particlesMissing";
import { percentAndFraction } from "./rules/percentAndFraction";
import { perWaterOrMix } from "./rules/perWaterOrMix";
import { polyolCrystallises } from "./rules/polyolCrystallises";
import { reachesOut } from "./rules/reachesOut";
import { referenceSlips } from "./rules/referenceSlips";
import { repeatedIngredient } from "./rules/repeatedIngredient";
import { solubilityExceeded } from "./rules/solubilityExceeded";
import { soluteConstant } from "./rules/soluteConstant";
import { staleValue } from "./rules/staleValue";
import { storedResult } from "./rules/storedResult";
import { temperatureUnit } from "./rules/temperatureUnit";
import { textFormula } from "./rules/textFormula";
import { textNumber } from "./rules/textNumber";
import { total } from "./rules/total";
import { unknownIngredient } from "./rules/unknownIngredient";
import { waterNotCounted } from "./rules/waterNotCounted";

/** Every rule of the audit. */
export const rules: readonly Rule[] = [
  missesTarget,
  storedResult,
  idealLawOff,
  cryoscopicConstant,
  soluteConstant,
  particlesMissing,
  depressionSign,
  iceBasis,
  inclusionAsSolute,
  abvAsMass,
  unknownIngredient,
  ambiguousIngredient,
  hydrateNotStated,
  textNumber,
  errorValue,
  total,
  temperatureUnit,
  repeatedIngredient,
  hiddenAmount,
  filteredRowsInSum,
  ownIngredientsRefused,
  waterNotCounted,
  perWaterOrMix,
  lactoseTwice,
  percentAndFraction,
  massUnit,
  formulaOverwritten,
  inconsistentFormula,
  referenceSlips,
  hardCodedNumber,
  circularReference,
  outsideSource,
  manualCalculation,
  staleValue,
  reachesOut,
  textFormula,
  nameWithOddLetters,
  solubilityExceeded,
  lactoseSandy,
  polyolCrystallises,
  alcoholTooMuch,
  cautionNotNamed,
  manySingleCalls,
  moreDigits,
  inputWithoutUnit,
];
