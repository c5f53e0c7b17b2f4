import { defineSolute } from "../solute";
import { sodiumBicarbonateFit } from "./curves/sodiumBicarbonate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const sodiumBicarbonate = defineSolute({
  name: "sodium bicarbonate",
  aliases: {
    en: [
      "baking soda",
      "sodium hydrogen carbonate",
      "bicarbonate of soda",
      "bicarb",
      "bicarb of soda",
      "sodium bicarb",
      "bread soda",
      "E 500(ii)",
    ],
    de: [
      "Natron",
      "Natriumhydrogencarbonat",
      "Speisenatron",
      "Natriumbicarbonat",
      "Backsoda",
      "Speisesoda",
      "Haushaltsnatron",
      "Backnatron",
      "doppeltkohlensaures Natron",
    ],
  },
  formula: "NaHCO3",
  cas: "144-55-8",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("NaHCO3"),
  vantHoff: particles(2),
  ...sodiumBicarbonateFit,
  eutecticTemperature: {
    value: -2.33,
    unit: "°C",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.1,
    basis: "spread of printed figures",
  },
  eutecticMassFraction: {
    value: 0.058,
    unit: "mass fraction",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.002,
    basis: "spread of printed figures",
  },
  solubility20: {
    value: 9.6,
    unit: "g per 100 g water",
    source: "solubilityTables",
    obtained: "from memory",
    uncertainty: 0.2,
    basis: "spread of printed figures",
  },
});
