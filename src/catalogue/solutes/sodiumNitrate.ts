import { defineSolute } from "../solute";
import { sodiumNitrateFit } from "./curves/sodiumNitrate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const sodiumNitrate = defineSolute({
  name: "sodium nitrate",
  aliases: {
    en: ["Chile saltpetre", "E 251"],
    de: ["Natriumnitrat", "Natronsalpeter", "Chilesalpeter"],
  },
  formula: "NaNO3",
  cas: "7631-99-4",
  kind: "salt",
  food: false,
  molarMass: molarMassOf("NaNO3"),
  vantHoff: particles(2),
  ...sodiumNitrateFit,
});
