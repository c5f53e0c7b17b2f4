import { defineSolute } from "../solute";
import { sodiumDihydrogenPhosphateFit } from "./curves/sodiumDihydrogenPhosphate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const sodiumDihydrogenPhosphate = defineSolute({
  name: "sodium dihydrogen phosphate",
  aliases: {
    en: ["monosodium phosphate", "monosodium dihydrogen phosphate", "monobasic sodium phosphate"],
    de: ["Natriumdihydrogenphosphat", "Mononatriumphosphat"],
  },
  formula: "NaH2PO4",
  cas: "7558-80-7",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("NaH2PO4"),
  vantHoff: particles(2),
  ...sodiumDihydrogenPhosphateFit,
});
