import { defineSolute } from "../solute";
import { potassiumCarbonateFit } from "./curves/potassiumCarbonate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const potassiumCarbonate = defineSolute({
  name: "potassium carbonate",
  aliases: { en: ["potash"], de: ["Pottasche", "Kaliumcarbonat"] },
  formula: "K2CO3",
  cas: "584-08-7",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("K2CO3"),
  vantHoff: particles(3),
  ...potassiumCarbonateFit,
});
