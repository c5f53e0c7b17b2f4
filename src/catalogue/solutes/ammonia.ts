import { defineSolute } from "../solute";
import { ammoniaFit } from "./curves/ammonia";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const ammonia = defineSolute({
  name: "ammonia",
  aliases: { en: [], de: ["Ammoniak"] },
  formula: "NH3",
  cas: "7664-41-7",
  kind: "other",
  food: false,
  molarMass: molarMassOf("NH3"),
  vantHoff: particles(1),
  ...ammoniaFit,
});
