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
    value: -50.47,
    unit: "°C",
    source: "tonerCatling2017",
    obtained: "computed here",
    uncertainty: 1,
    basis: "ice and salt line of a low-temperature model; handbooks agree within this",
  },
  eutecticMassFraction: {
    value: 0.3051,
    unit: "mass fraction",
    source: "tonerCatling2017",
    obtained: "computed here",
    uncertainty: 0.004,
    basis: "ice and salt line of a low-temperature model; handbooks agree within this",
  },
  solubility20: {
    value: 74.4,
    unit: "g per 100 g water",
    source: "tonerCatling2017",
    obtained: "computed here",
    uncertainty: 1,
    basis:
      "solubility line of a model fitted to measured solubilities; handbooks agree within this",
  },
});
