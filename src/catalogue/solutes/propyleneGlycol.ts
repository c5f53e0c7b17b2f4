import { defineSolute } from "../solute";
import { propyleneGlycolFit } from "./curves/propyleneGlycol";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const propyleneGlycol = defineSolute({
  name: "propylene glycol",
  aliases: {
    en: [
      "propane-1,2-diol",
      "1,2-propanediol",
      "monopropylene glycol",
      "1,2-propylene glycol",
      "MPG",
    ],
    de: ["Propylenglykol", "Monopropylenglykol", "Propan-1,2-diol", "1,2-Propandiol"],
  },
  formula: "C3H8O2",
  cas: "57-55-6",
  kind: "alcohol",
  food: false,
  molarMass: molarMassOf("C3H8O2"),
  vantHoff: particles(1),
  ...propyleneGlycolFit,
  maxFreezeTemperature: {
    value: -90,
    unit: "°C",
    source: "rimeline",
    obtained: "computed here",
    uncertainty: 20,
    basis: "estimate: a little above the glass transition of the pure liquid",
  },
  maxFreezeSolids: {
    value: 0.6,
    unit: "mass fraction",
    source: "rimeline",
    obtained: "computed here",
    uncertainty: 0.1,
    basis: "estimate: a little above the glass transition of the pure liquid",
  },
  note: "A permitted carrier in flavourings; here for class, not as an ingredient.",
});
