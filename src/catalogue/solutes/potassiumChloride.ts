import { defineSolute } from "../solute";
import { potassiumChlorideFit } from "./curves/potassiumChloride";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const potassiumChloride = defineSolute({
  name: "potassium chloride",
  aliases: { en: [], de: ["Kaliumchlorid"] },
  formula: "KCl",
  cas: "7447-40-7",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("KCl"),
  vantHoff: particles(2),
  ...potassiumChlorideFit,
  eutecticTemperature: {
    value: -10.7,
    unit: "°C",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.1,
    basis: "spread of printed figures",
  },
  eutecticMassFraction: {
    value: 0.197,
    unit: "mass fraction",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.002,
    basis: "spread of printed figures",
  },
  solubility20: {
    value: 34.2,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 0.3,
    basis: "spread of printed figures",
  },
});
