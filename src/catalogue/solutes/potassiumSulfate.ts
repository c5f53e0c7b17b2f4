import { defineSolute } from "../solute";
import { potassiumSulfateFit } from "./curves/potassiumSulfate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const potassiumSulfate = defineSolute({
  name: "potassium sulfate",
  aliases: { en: ["potassium sulphate"], de: ["Kaliumsulfat"] },
  formula: "K2SO4",
  cas: "7778-80-5",
  kind: "salt",
  food: false,
  molarMass: molarMassOf("K2SO4"),
  vantHoff: particles(3),
  ...potassiumSulfateFit,
});
