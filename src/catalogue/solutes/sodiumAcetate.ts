import { defineSolute } from "../solute";
import { sodiumAcetateFit } from "./curves/sodiumAcetate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const sodiumAcetate = defineSolute({
  name: "sodium acetate",
  aliases: { en: ["CH3COONa", "NaOAc", "sodium ethanoate"], de: ["Natriumacetat"] },
  formula: "NaC2H3O2",
  cas: "127-09-3",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("NaC2H3O2"),
  vantHoff: particles(2),
  ...sodiumAcetateFit,
});
