import { defineSolute } from "../solute";
import { onePropanolFit } from "./curves/onePropanol";
import { molarMassOf } from "./molarMassOf";
import { particles } from "./particles";

export const onePropanol = defineSolute({
  name: "1-propanol",
  aliases: { en: ["propan-1-ol"], de: ["Propanol"] },
  formula: "C3H8O",
  cas: "71-23-8",
  kind: "alcohol",
  food: false,
  molarMass: molarMassOf("C3H8O"),
  vantHoff: particles(1),
  ...onePropanolFit,
});
