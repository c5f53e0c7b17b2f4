import { defineSolute } from "../solute";
import { aceticAcidFit } from "./curves/aceticAcid";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const aceticAcid = defineSolute({
  name: "acetic acid",
  aliases: {
    en: ["ethanoic acid", "glacial acetic acid", "E 260", "CH3COOH"],
    de: ["Essigsäure", "Eisessig", "Ethansäure"],
  },
  formula: "C2H4O2",
  cas: "64-19-7",
  kind: "acid",
  food: true,
  molarMass: molarMassOf("C2H4O2"),
  vantHoff: particles(1),
  ...aceticAcidFit,
});
