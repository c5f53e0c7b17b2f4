import { defineSolute } from "../solute";
import { sodiumHydroxideFit } from "./curves/sodiumHydroxide";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const sodiumHydroxide = defineSolute({
  name: "sodium hydroxide",
  aliases: { en: ["caustic soda", "lye", "E 524"], de: ["Ätznatron", "Natriumhydroxid"] },
  formula: "NaOH",
  cas: "1310-73-2",
  kind: "other",
  food: false,
  molarMass: molarMassOf("NaOH"),
  vantHoff: particles(2),
  ...sodiumHydroxideFit,
});
