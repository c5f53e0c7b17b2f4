import { defineSolute } from "../solute";
import { sodiumCarbonateFit } from "./curves/sodiumCarbonate";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const sodiumCarbonate = defineSolute({
  name: "sodium carbonate",
  aliases: { en: ["soda ash", "washing soda, anhydrous", "E 500(i)"], de: ["Natriumcarbonat"] },
  formula: "Na2CO3",
  cas: "497-19-8",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("Na2CO3"),
  vantHoff: particles(3),
  ...sodiumCarbonateFit,
  eutecticTemperature: {
    value: -2.1,
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
});
