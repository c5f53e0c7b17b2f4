import { defineSolute } from "../solute";
import { sodiumChlorideFit } from "./curves/sodiumChloride";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const sodiumChloride = defineSolute({
  name: "sodium chloride",
  aliases: {
    en: [
      "salt",
      "table salt",
      "sea salt",
      "kitchen salt",
      "rock salt",
      "cooking salt",
      "pickling salt",
      "common salt",
      "vacuum salt",
    ],
    de: ["Salz", "Kochsalz", "Speisesalz", "Tafelsalz", "Meersalz", "Natriumchlorid", "Steinsalz"],
  },
  formula: "NaCl",
  cas: "7647-14-5",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("NaCl"),
  vantHoff: particles(2),
  ...sodiumChlorideFit,
  eutecticTemperature: {
    value: -21.1,
    unit: "°C",
    source: "lange15",
    obtained: "from the source",
    uncertainty: 0.1,
    basis: "spread of printed figures",
  },
  eutecticMassFraction: {
    value: 0.233,
    unit: "mass fraction",
    source: "lange15",
    obtained: "from the source",
    uncertainty: 0.002,
    basis: "spread of printed figures",
  },
  solubility20: {
    value: 35.9,
    unit: "g per 100 g water",
    source: "tonerCatling2017",
    obtained: "computed here",
    uncertainty: 0.1,
    basis:
      "solubility line of a model fitted to measured solubilities; handbooks agree within this",
  },
});
