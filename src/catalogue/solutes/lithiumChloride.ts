import { defineSolute } from "../solute";
import { lithiumChlorideFit } from "./curves/lithiumChloride";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const lithiumChloride = defineSolute({
  name: "lithium chloride",
  aliases: { en: [], de: ["Lithiumchlorid"] },
  formula: "LiCl",
  cas: "7447-41-8",
  kind: "salt",
  food: false,
  molarMass: molarMassOf("LiCl"),
  vantHoff: particles(2),
  ...lithiumChlorideFit,
});
