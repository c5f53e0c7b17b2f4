import { defineSolute } from "../solute";
import { potassiumHydrogenPhosphateFit } from "./curves/potassiumHydrogenPhosphate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const potassiumHydrogenPhosphate = defineSolute({
  name: "potassium hydrogen phosphate",
  aliases: {
    en: ["dipotassium phosphate", "dipotassium hydrogen phosphate", "dibasic potassium phosphate"],
    de: ["Dikaliumhydrogenphosphat", "Dikaliumphosphat"],
  },
  formula: "K2HPO4",
  cas: "7758-11-4",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("K2HPO4"),
  vantHoff: particles(3),
  ...potassiumHydrogenPhosphateFit,
});
