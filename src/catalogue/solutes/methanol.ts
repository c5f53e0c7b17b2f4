import { defineSolute } from "../solute";
import { methanolFit } from "./curves/methanol";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const methanol = defineSolute({
  name: "methanol",
  aliases: {
    en: ["methyl alcohol", "wood alcohol", "MeOH", "CH3OH"],
    de: ["Holzgeist", "Methylalkohol"],
  },
  formula: "CH4O",
  cas: "67-56-1",
  kind: "alcohol",
  food: false,
  molarMass: molarMassOf("CH4O"),
  vantHoff: particles(1),
  ...methanolFit,
  note: "Poisonous.",
});
