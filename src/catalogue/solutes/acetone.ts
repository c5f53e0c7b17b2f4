import { defineSolute } from "../solute";
import { acetoneFit } from "./curves/acetone";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const acetone = defineSolute({
  name: "acetone",
  aliases: { en: ["propanone", "dimethyl ketone"], de: ["Aceton", "Propanon"] },
  formula: "C3H6O",
  cas: "67-64-1",
  kind: "other",
  food: false,
  molarMass: molarMassOf("C3H6O"),
  vantHoff: particles(1),
  ...acetoneFit,
});
