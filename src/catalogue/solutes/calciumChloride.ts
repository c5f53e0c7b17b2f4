import { defineSolute } from "../solute";
import { calciumChlorideFit } from "./curves/calciumChloride";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const calciumChloride = defineSolute({
  name: "calcium chloride",
  aliases: { en: ["anhydrous calcium chloride"], de: ["Calciumchlorid"] },
  formula: "CaCl2",
  cas: "10043-52-4",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("CaCl2"),
  vantHoff: particles(3),
  ...calciumChlorideFit,
  eutecticTemperature: {
    value: -49.8,
    unit: "°C",
    source: "ict",
    obtained: "from memory",
    uncertainty: 1,
    basis: "spread of printed figures",
  },
  eutecticMassFraction: {
    value: 0.302,
    unit: "mass fraction",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.004,
    basis: "spread of printed figures",
  },
  solubility20: {
    value: 74.5,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 1,
    basis: "spread of printed figures",
  },
});
