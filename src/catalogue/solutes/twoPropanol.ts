import { defineSolute } from "../solute";
import { twoPropanolFit } from "./curves/twoPropanol";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const twoPropanol = defineSolute({
  name: "2-propanol",
  aliases: { en: ["isopropanol", "isopropyl alcohol", "propan-2-ol"], de: ["Isopropylalkohol"] },
  formula: "C3H8O",
  cas: "67-63-0",
  kind: "alcohol",
  food: false,
  molarMass: molarMassOf("C3H8O"),
  vantHoff: particles(1),
  ...twoPropanolFit,
});
