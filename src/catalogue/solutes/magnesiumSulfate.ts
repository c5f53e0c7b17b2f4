import { defineSolute } from "../solute";
import { magnesiumSulfateFit } from "./curves/magnesiumSulfate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const magnesiumSulfate = defineSolute({
  name: "magnesium sulfate",
  aliases: { en: ["magnesium sulphate", "Epsom salt, anhydrous"], de: ["Magnesiumsulfat"] },
  formula: "MgSO4",
  cas: "7487-88-9",
  kind: "salt",
  food: false,
  molarMass: molarMassOf("MgSO4"),
  vantHoff: particles(2),
  ...magnesiumSulfateFit,
});
