import { defineSolute } from "../solute";
import { ureaFit } from "./curves/urea";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const urea = defineSolute({
  name: "urea",
  aliases: { en: ["carbamide", "CO(NH2)2"], de: ["Harnstoff", "Karbamid"] },
  formula: "CH4N2O",
  cas: "57-13-6",
  kind: "other",
  food: false,
  molarMass: molarMassOf("CH4N2O"),
  vantHoff: particles(1),
  ...ureaFit,
  eutecticTemperature: {
    value: -11.5,
    unit: "°C",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.2,
    basis: "spread of printed figures",
  },
  eutecticMassFraction: {
    value: 0.328,
    unit: "mass fraction",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.004,
    basis: "spread of printed figures",
  },
  solubility20: {
    value: 108,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 3,
    basis: "spread of printed figures",
  },
});
