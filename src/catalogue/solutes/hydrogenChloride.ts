import { defineSolute } from "../solute";
import { hydrogenChlorideFit } from "./curves/hydrogenChloride";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const hydrogenChloride = defineSolute({
  name: "hydrogen chloride",
  aliases: { en: ["hydrochloric acid"], de: ["Salzsäure", "Chlorwasserstoff"] },
  formula: "HCl",
  cas: "7647-01-0",
  kind: "acid",
  food: false,
  molarMass: molarMassOf("HCl"),
  vantHoff: particles(2),
  ...hydrogenChlorideFit,
});
