import { defineSolute } from "../solute";
import { sodiumSulfateFit } from "./curves/sodiumSulfate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const sodiumSulfate = defineSolute({
  name: "sodium sulfate",
  aliases: { en: ["sodium sulphate"], de: ["Natriumsulfat"] },
  formula: "Na2SO4",
  cas: "7757-82-6",
  kind: "salt",
  food: false,
  molarMass: molarMassOf("Na2SO4"),
  vantHoff: particles(3),
  ...sodiumSulfateFit,
  eutecticTemperature: {
    value: -1.2,
    unit: "°C",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.1,
    basis: "spread of printed figures",
  },
  eutecticMassFraction: {
    value: 0.039,
    unit: "mass fraction",
    source: "ict",
    obtained: "from memory",
    uncertainty: 0.002,
    basis: "spread of printed figures",
  },
});
