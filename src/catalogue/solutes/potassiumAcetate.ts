import { defineSolute } from "../solute";
import { potassiumAcetateFit } from "./curves/potassiumAcetate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const potassiumAcetate = defineSolute({
  name: "potassium acetate",
  aliases: { en: ["CH3COOK", "KOAc"], de: ["Kaliumacetat"] },
  formula: "KC2H3O2",
  cas: "127-08-2",
  kind: "salt",
  food: false,
  molarMass: molarMassOf("KC2H3O2"),
  vantHoff: particles(2),
  ...potassiumAcetateFit,
});
