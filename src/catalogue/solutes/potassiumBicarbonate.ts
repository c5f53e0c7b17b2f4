import { defineSolute } from "../solute";
import { potassiumBicarbonateFit } from "./curves/potassiumBicarbonate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const potassiumBicarbonate = defineSolute({
  name: "potassium bicarbonate",
  aliases: {
    en: ["potassium hydrogen carbonate"],
    de: ["Kaliumhydrogencarbonat", "Kaliumbicarbonat"],
  },
  formula: "KHCO3",
  cas: "298-14-6",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("KHCO3"),
  vantHoff: particles(2),
  ...potassiumBicarbonateFit,
});
