import { defineSolute } from "../solute";
import { ethyleneGlycolFit } from "./curves/ethyleneGlycol";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const ethyleneGlycol = defineSolute({
  name: "ethylene glycol",
  aliases: {
    en: ["ethane-1,2-diol", "monoethylene glycol", "1,2-ethanediol", "MEG"],
    de: ["Ethylenglykol", "Monoethylenglykol", "Ethan-1,2-diol"],
  },
  formula: "C2H6O2",
  cas: "107-21-1",
  kind: "alcohol",
  food: false,
  molarMass: molarMassOf("C2H6O2"),
  vantHoff: particles(1),
  ...ethyleneGlycolFit,
  note: "Poisonous.",
});
