import { defineSolute } from "../solute";
import { potassiumChlorideFit } from "./curves/potassiumChloride";
import { molarMassOf } from "../molarMassOf";
import { particles } from "../particles";

export const potassiumChloride = defineSolute({
  name: "potassium chloride",
  aliases: { en: ["E 508"], de: ["Kaliumchlorid"] },
  formula: "KCl",
  cas: "7447-40-7",
  kind: "salt",
  food: true,
  molarMass: molarMassOf("KCl"),
  vantHoff: particles(2),
  ...potassiumChlorideFit,
  eutecticTemperature: {
    value: -10.71,
    unit: "°C",
    source: "tonerCatling2017",
    obtained: "computed here",
    uncertainty: 0.1,
    basis: "ice and salt line of a low-temperature model; handbooks agree within this",
  },
  eutecticMassFraction: {
    value: 0.1958,
    unit: "mass fraction",
    source: "tonerCatling2017",
    obtained: "computed here",
    uncertainty: 0.002,
    basis: "ice and salt line of a low-temperature model; handbooks agree within this",
  },
  solubility20: {
    value: 34.4,
    unit: "g per 100 g water",
    source: "tonerCatling2017",
    obtained: "computed here",
    uncertainty: 0.3,
    basis:
      "solubility line of a model fitted to measured solubilities; handbooks agree within this",
  },
});
