import { defineSolute } from "../solute";
import { trisodiumCitrateFit } from "./curves/trisodiumCitrate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const trisodiumCitrate = defineSolute({
  name: "trisodium citrate",
  aliases: {
    en: ["sodium citrate, anhydrous"],
    de: ["Natriumcitrat, wasserfrei", "Trinatriumcitrat"],
  },
  formula: "Na3C6H5O7",
  cas: "68-04-2",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("Na3C6H5O7"),
  vantHoff: particles(4),
  ...trisodiumCitrateFit,
});
