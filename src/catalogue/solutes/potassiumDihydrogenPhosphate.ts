import { defineSolute } from "../solute";
import { potassiumDihydrogenPhosphateFit } from "./curves/potassiumDihydrogenPhosphate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const potassiumDihydrogenPhosphate = defineSolute({
  name: "potassium dihydrogen phosphate",
  aliases: {
    en: ["monopotassium phosphate", "MKP", "monobasic potassium phosphate"],
    de: ["Kaliumdihydrogenphosphat", "Monokaliumphosphat"],
  },
  formula: "KH2PO4",
  cas: "7778-77-0",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("KH2PO4"),
  vantHoff: particles(2),
  ...potassiumDihydrogenPhosphateFit,
});
